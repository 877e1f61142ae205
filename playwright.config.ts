import { defineConfig } from '@playwright/test';
import { findBrowser } from './scripts/browser';

const browser = await findBrowser();
const PORT = 5179;

export default defineConfig({
  testDir: 'tests/browser',
  testMatch: '**/*.spec.ts',
  // The software rasteriser already uses every core.
  workers: 1,
  timeout: 180_000,
  expect: { timeout: 60_000 },
  reporter: process.env.CI ? [['list']] : [['line']],
  use: {
    baseURL: `http://127.0.0.1:${PORT}/`,
    viewport: { width: 1440, height: 900 },
    launchOptions: {
      executablePath: browser.executablePath,
      args: [...browser.args],
      env: { ...browser.env },
    },
  },
  webServer: {
    command: `npx vite build --logLevel warn && npx vite preview --host 127.0.0.1 --port ${PORT} --strictPort`,
    url: `http://127.0.0.1:${PORT}/`,
    timeout: 180_000,
    reuseExistingServer: false,
  },
});
