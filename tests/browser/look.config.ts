import { defineConfig } from '@playwright/test'
import journeys from './playwright.config.ts'

/** `npm run look`: every screen in every state as pictures in out/look, to be looked at. */
export default defineConfig({ ...journeys, testMatch: 'look.ts', timeout: 600_000, reporter: 'list' })
