import { defineConfig } from '@playwright/test'
import { chromium } from './chromium.ts'

/** Journeys of people through the real app in a real browser, each over a server and a data folder of its own. */
export default defineConfig({
  testDir: '.',
  testMatch: '*.journey.ts',
  outputDir: '../../.cache/browser',
  workers: 2,
  timeout: 90_000,
  expect: { timeout: 10_000 },
  reporter: [['list'], ['json', { outputFile: '../../.cache/browser-results.json' }]],
  use: {
    launchOptions: {
      executablePath: chromium(),
      args: [
        '--no-sandbox',
        '--disable-gpu',
        '--disable-quic',
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
        '--host-resolver-rules=MAP clinic.lan 127.0.0.1',
      ],
    },
    viewport: { width: 1280, height: 900 },
    locale: 'en-GB',
    timezoneId: 'Europe/London',
    trace: process.env.TRACE ? 'retain-on-failure' : 'off',
  },
})
