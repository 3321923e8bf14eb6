import { handlingInEnglish } from '../handling.ts'

/** For hands that give a medicine at home, in Spanish. */
export const handlingInSpanish = {
  chloramphenicol: {
    ...handlingInEnglish.chloramphenicol,
    value:
      'A algunas personas esta medicina les daña la sangre, y eso puede matar. Use guantes. No la machaque. Quien esté embarazada no debe tocarla. Lávese las manos después.',
  },
} as const
