import type { Side, Species } from '#core/animal/species.ts'
import type { Known } from '#core/evidence/sourced.ts'

/** Words that every paper of an owner shares, in Spanish. The sides agree with "oído", "ojo" and "lado". */
export const papersInSpanish = {
  language: 'es',
  notRecorded: 'no consta',
  notKnown: 'no se sabe',
  nobodyAvailable: 'no hay nadie disponible',
  phone: 'Teléfono {phone}',
  dated: 'Escrito el {date}',
  provenance: '{stream} · hecho con {count} anotaciones; la última: {last}',
  conflicts: 'CONTRADICCIONES POR ACLARAR: {count}',
  pending: 'ANOTACIONES QUE AÚN FALTAN: {count}',
  known: {
    read: 'leído',
    remembered: 'de memoria, sin leerlo otra vez',
    'common-practice': 'uso habitual, sin publicación que citar',
    house: 'nuestro propio criterio',
  } satisfies Record<Known, string>,
  source: '{citation} ({known})',
  sourceAt: '{citation}; {where} ({known})',
  pleaseNote: 'Tenga en cuenta',
  signedOn: 'Fecha',
  sides: { LEFT: 'IZQUIERDO', RIGHT: 'DERECHO' } satisfies Record<Side, string>,
  species: { dog: 'perro', cat: 'gato' } satisfies Record<Species, string>,
  sexes: { female: 'hembra', male: 'macho', unknown: 'sexo desconocido' },
  neutered: { yes: 'castración hecha', no: 'sin castrar', unknown: 'castración desconocida' },
  born: 'nacimiento: {date}',
  chip: 'microchip {chip}',
} as const
