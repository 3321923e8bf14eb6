import type { OddsWording } from '#core/evidence/say-published.ts'
import { followedInSpanish } from './followed.ts'
import { outcomesInSpanish } from './outcomes.ts'

/**
 * The odds page in Spanish. What happened stands as a noun after a colon ("in 81 there was this: a weak face"), because a
 * Spanish verb would need one form for 1 and another for 81.
 */
export const oddsInSpanish = {
  sentences: {
    'one-study':
      'En un estudio de {group}, en {events} hubo esto: {happened}. Es decir, {middle} de cada 100. La cifra real está probablemente entre {low} y {high}.',
    'one-study-none':
      'En un estudio de {group}, en ningún caso hubo esto: {happened}. Eso no quiere decir nunca: la cifra real aún podría llegar a {high} de cada 100.',
    'one-study-all':
      'En un estudio de {group}, en todos ({events}) hubo esto: {happened}. La cifra real aún podría ser solo {low} de cada 100.',
    'several-studies':
      '{number} estudios de {animals} contaron esto y encontraron entre {lowest} y {highest} de cada 100. Mostramos cada uno por separado y no los unimos en una sola cifra.',
    'two-readings':
      'Un estudio de {animals} lo escribió de un modo que se puede leer como {lowest} o como {highest} de cada 100. Mientras no se aclare, la cifra real está probablemente entre {low} y {high}.',
    unknown:
      'No se sabe en {animals} después de {procedure}: {what}. No encontramos ningún estudio que podamos usar. Que no se sepa no quiere decir nunca.',
    'unknown-in-this-unit':
      'No se sabe por {unit} en {animals} después de {procedure}: {what}. Los estudios lo contaron por {others}, y las dos cuentas no se mezclan nunca.',
    line: '{group}: en {events} hubo {happened}. Es decir, {middle} de cada 100, probablemente entre {low} y {high}.',
    'line-none': '{group}: en ningún caso hubo {happened}. La cifra real aún podría llegar a {high} de cada 100.',
    'line-all': '{group}: en todos ({events}) hubo {happened}. La cifra real aún podría ser solo {low} de cada 100.',
    'was-followed-by': 'después, {what}',
    'were-followed-by': 'después, {what}',
    'met-with': '{what}',
    or: ' o ',
    about: 'cerca de {number}',
    'fewer-than-one': 'menos de 1',
    'more-than-99': 'más de 99',
    followed: 'Tiempo que se miró: {followed}.',
    'follow-up-not-stated': 'Lo que leímos del estudio no dice por cuánto tiempo se miró.',
    'both-ears-of-one-animal':
      'A algunos {animals} se les operaron los dos oídos, y dos oídos de un mismo animal se parecen. El margen real es algo más ancho.',
  },
  groups: {
    animal: { one: '{total} {animal}', many: '{total} {animals}' },
    ear: { one: '{total} oído operado de un {animal}', many: '{total} oídos operados de {animals}' },
    procedure: { one: '{total} operación en un {animal}', many: '{total} operaciones en {animals}' },
  },
  units: { animal: 'animal', ear: 'oído operado', procedure: 'operación' },
  animals: { dog: { one: 'perro', many: 'perros' }, cat: { one: 'gato', many: 'gatos' } },
  procedures: {
    'teca-lbo': 'quitar el canal del oído y abrir de lado el oído medio',
    'ventral-bulla-osteotomy': 'abrir el oído medio desde abajo',
    traction: 'sacar un pólipo',
    'lateral-wall-resection': 'abrir de lado la parte alta del canal del oído',
    'vertical-canal-ablation': 'quitar la parte vertical del canal del oído',
    'subtotal-ablation': 'quitar todo el canal del oído menos la parte más externa',
    'teca-vbo': 'quitar el canal del oído y abrir el oído medio desde abajo',
    'teca-alone': 'quitar el canal del oído sin abrir el oído medio',
    'teca-lbo-and-vbo': 'abrir el oído medio de lado o desde abajo',
    'teca-lbo-experimental': 'quitar un canal del oído sano en un experimento',
    'vbo-experimental': 'abrir un oído medio sano en un experimento',
    'vbo-after-teca-lbo': 'una segunda operación desde abajo por una infección que volvió',
    'antibiotics-after-teca-lbo': 'dar solo antibióticos por una infección que volvió',
    'cholesteatoma-surgery': 'operar un quiste de piel del oído medio',
    'cholesteatoma-endoscopic-clearing': 'limpiar un quiste de piel del oído medio por el canal, sin cirugía',
    'lateral-resection-or-excision': 'cortar un bulto pequeño del canal del oído',
    'lateral-resection-for-tumour': 'abrir de lado la parte alta del canal del oído por un tumor',
    'traction-endoscopic': 'sacar un pólipo a través del tímpano con una cámara',
    'traction-lateral': 'sacar un pólipo por una pequeña abertura de lado',
  },
  outcomes: outcomesInSpanish,
  followed: followedInSpanish,
} as const satisfies OddsWording
