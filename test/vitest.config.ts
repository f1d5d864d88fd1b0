/// <reference types="vitest/config" />
import { getViteConfig } from 'astro/config';

// Astro's own Vite setup, so that tests may import Svelte files and raw text as pages do.
export default getViteConfig({
  test: {
    dir: 'test',
    include: ['**/*.test.ts'],
    setupFiles: ['test/support/properties.ts'],
    // Property tests try thousands of inputs, and the machine may be a slow one.
    testTimeout: 60_000,
    // No test leaves anything behind, so files can share a worker: half the time.
    isolate: false,
  },
});
