import type { Scheme } from '#core/complications/scheme.ts'
import { clavienDindoDogsScheme } from './clavien-dindo-dogs.ts'
import { cook2010Scheme } from './cook-2010.ts'
import { vcogCtcae2Scheme } from './vcog-ctcae-2.ts'

/** Every published way to grade a complication that is worked out here. */
export const complicationSchemes: readonly Scheme[] = [cook2010Scheme, clavienDindoDogsScheme, vcogCtcae2Scheme]
