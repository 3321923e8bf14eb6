import type { ToldWording } from '#core/evidence/say-told.ts'

/** What is said of studies joined with our own results, in Spanish. What happened is a noun after a colon, as in odds.ts. */
export const toldInSpanish = {
  sentences: {
    framing: 'Al revés: en {rest} de cada 100 {not}.',
    expected:
      'De cada 100 {group}, en {middle} hubo esto: {happened}; en {rest} {not}. {number} estudios con {total} {group} encontraron entre {lowest} y {highest} de cada 100. Donde nadie ha contado aún, puede estar en cualquier punto entre {low} y {high}.',
    updated:
      'De cada 100 {group}, en {middle} hubo esto: {happened}; en {rest} {not}. Aquí la cifra real está probablemente entre {low} y {high}. Esto une {studies} con {total} {group} y {own} de nuestra clínica.',
    'one-study': '1 estudio',
    studies: '{number} estudios',
    'own-shown':
      'En nuestra clínica, de {total} {group}, en {events} hubo esto: {happened}. Por sí solo es {middle} de cada 100, probablemente entre {low} y {high}.',
    'own-none':
      'En nuestra clínica, de {total} {group}, en ningún caso hubo esto: {happened}. Por sí solo eso aún podría llegar a {high} de cada 100.',
    'own-withheld':
      'En nuestra clínica hemos contado {total} {group}. Es muy poco para dar una cifra propia; la damos a partir de {from}.',
    'own-lost': 'De otros {lost} casos nuestros no se sabe.',
    'own-alone':
      'Solo tenemos nuestra propia cuenta: de {total} {group}, en {events} hubo esto: {happened}. Es decir, {middle} de cada 100, probablemente entre {low} y {high}.',
    'own-alone-none':
      'Solo tenemos nuestra propia cuenta: de {total} {group}, en ningún caso hubo esto: {happened}. Eso no quiere decir nunca: aún podría llegar a {high} de cada 100.',
    'own-too-few':
      'En nuestra clínica hemos contado {total} {group}. Es muy poco para dar una cifra; la damos a partir de {from}.',
    'own-untrusted':
      'Nuestros resultados quedan tan lejos de los estudios que no los unimos. Pregúntenos qué pensamos de eso.',
  },
  groups: {
    animal: '{animals}',
    ear: 'oídos operados de {animals}',
    procedure: 'operaciones en {animals}',
  },
  quoted: {
    beside: '{name} (las revisiones citan {spans} de cada 100 y no dicen a quién contaron)',
    sentence: 'Las revisiones citan {spans} de cada 100 y no dicen a quién contaron. No hacemos de eso una cifra.',
    span: 'de {low} a {high}',
    alone: '{low}',
    or: ' o ',
  },
  not: { animals: 'no hubo esto', operated: 'no hubo esto', during: 'no hubo esto' },
} as const satisfies ToldWording
