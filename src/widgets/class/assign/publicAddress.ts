/** Hosts that mean this machine, or none. */
const PRIVATE = /^(localhost|127\.[\d.]+|\[::1\]|0\.0\.0\.0|.*\.localhost|)$/;

/**
 * True where others can open what is at this address. A page on this machine has none that a
 * student could type, nor has a file.
 */
export function isPublic(address: string): boolean {
  try {
    const { protocol, hostname } = new URL(address);
    return /^https?:$/.test(protocol) && !PRIVATE.test(hostname);
  } catch {
    return false;
  }
}
