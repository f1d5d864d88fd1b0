import { defineConfig } from 'playwright/test';
import { findBrowser, launchOptions } from './support/findBrowser.ts';
import { site } from './support/site.ts';

// Workers load this file again; the variable spares them the search.
const browser = process.env['BROWSER_PATH'] ?? (await findBrowser()).path;
process.env['BROWSER_PATH'] = browser;

const origin = `http://localhost:${site.port}`;

export default defineConfig({
  testDir: './browser',
  outputDir: '../test-results/browser',
  // What is said is the same on every system.
  snapshotPathTemplate: '{testDir}/{testFilePath}-snapshots/{arg}{ext}',
  fullyParallel: true,
  workers: 2,
  timeout: 60_000,
  reporter: [['dot'], ['json', { outputFile: '../test-results/browser.json' }]],
  use: {
    baseURL: `${origin}${site.base}/`,
    locale: 'en-US',
    // Keeping the whole site for each test would be most of the work; offline.spec.ts allows it.
    serviceWorkers: 'block',
    launchOptions: launchOptions(browser),
  },
  webServer: {
    command: `node test/support/serve.ts ${site.folder} ${site.port}`,
    cwd: '..',
    env: { SITE_BASE: site.base || '/', ASTRO_TELEMETRY_DISABLED: '1' },
    url: `${origin}${site.base}/`,
    reuseExistingServer: false,
    gracefulShutdown: { signal: 'SIGTERM', timeout: 5000 },
  },
});
