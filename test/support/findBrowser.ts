import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { chromium, type LaunchOptions } from 'playwright';

/** How a browser is started: without its sandbox only for root, who can't have one. */
export function launchOptions(executablePath: string): LaunchOptions {
  return {
    executablePath,
    chromiumSandbox: process.getuid?.() !== 0,
    args: ['--disable-background-networking', '--disable-component-update'],
  };
}

export interface FoundBrowser {
  readonly path: string;
  /** Where it came from, and its version, in words. */
  readonly how: string;
}

const installed = [
  '/usr/bin/google-chrome',
  '/usr/bin/google-chrome-stable',
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/snap/bin/chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
  'C:\\Program Files (x86)\\Google\\Chrome\\Application\\chrome.exe',
];

/**
 * A Chrome or Chromium that starts: the one in BROWSER_PATH, an installed one, Playwright's own,
 * one that Playwright fetches, or Debian's package where we are root.
 * @throws Error where none of them starts; it lists what was tried
 */
export async function findBrowser(): Promise<FoundBrowser> {
  const tried: string[] = [];

  async function starting(path: string, how: string): Promise<FoundBrowser | null> {
    if (!existsSync(path)) return null;
    try {
      const browser = await chromium.launch(launchOptions(path));
      const version = browser.version();
      await browser.close();
      return { path, how: `${how} (${version})` };
    } catch (error) {
      tried.push(`${path}: ${String(error).split('\n').slice(0, 2).join(' ')}`);
      return null;
    }
  }

  function ran(command: string, ...args: string[]): boolean {
    try {
      execFileSync(command, args, { stdio: 'ignore', shell: process.platform === 'win32' });
      return true;
    } catch (error) {
      tried.push(`${command} ${args.join(' ')}: ${String(error).split('\n')[0]}`);
      return false;
    }
  }

  const given = process.env['BROWSER_PATH'];
  if (given) {
    const found = await starting(given, 'BROWSER_PATH');
    if (found) return found;
    throw new Error(`BROWSER_PATH does not start: ${tried[0] ?? `there is no ${given}`}`);
  }
  for (const path of installed) {
    const found = await starting(path, `installed ${path}`);
    if (found) return found;
  }
  const own = () => starting(chromium.executablePath(), "Playwright's own");
  const fetched =
    (await own()) ?? (ran('npx', 'playwright', 'install', 'chromium') ? await own() : null);
  if (fetched) return fetched;
  if (
    process.getuid?.() === 0 &&
    ran('apt-get', 'update') &&
    ran('apt-get', 'install', '--yes', '--no-install-recommends', 'chromium')
  ) {
    const found = await starting('/usr/bin/chromium', "the system's package");
    if (found) return found;
  }
  throw new Error(
    ['No Chrome or Chromium starts. Install one, or set BROWSER_PATH. Tried:', ...tried].join(
      '\n  ',
    ),
  );
}
