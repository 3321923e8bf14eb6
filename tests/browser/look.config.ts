import { defineConfig } from '@playwright/test'
import journeys from './playwright.config.ts'

/** `npm run look`: every screen in every state as pictures in out/look, to be looked at; the pictures of the README in docs/pictures. */
export default defineConfig({
  ...journeys,
  testMatch: ['look.ts', 'readme-pictures.ts'],
  timeout: 600_000,
  reporter: 'list',
})
