import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'

/** The faces the papers are set in. Other scripts join here when a language needs them. */
const faces = ['400Regular', '400Regular_Italic', '600SemiBold', '700Bold'] as const

/** The fonts of the papers as bytes, from the installed package; papers themselves never read the disk. */
export function loadFonts(): Uint8Array[] {
  const { resolve } = createRequire(import.meta.url)
  return faces.map((face) => readFileSync(resolve(`@expo-google-fonts/noto-sans/${face}/NotoSans_${face}.ttf`)))
}
