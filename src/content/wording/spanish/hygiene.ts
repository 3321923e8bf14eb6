import { hygieneKnown } from '../hygiene.ts'

/** What an owner does while an animal carries a germ that is hard to treat, in Spanish. */
export const hygieneInSpanish = {
  title: 'Un germen difícil de tratar',
  found: 'Una prueba halló un germen que muchas medicinas no matan. Su nombre corto es {name}.',
  maybe: 'Una prueba halló un germen que quizá muchas medicinas no maten ({name}). Hasta saberlo, haga lo mismo.',
  items: {
    value: [
      'Lávese las manos antes y después de tocar el oído, la venda o la medicina.',
      'No deje que le lama a nadie la cara ni una herida.',
      'Tape los cortes de su propia piel.',
      'Lave su cama con agua caliente.',
      'No duerma con él o ella mientras la herida suelte líquido.',
      '¿Hay en casa un bebé, alguien enfermo o con heridas, o que cuida a enfermos? Que lo diga a su médico.',
    ],
    ...hygieneKnown,
  },
  keep: 'No hace falta que lo dé a otra casa. El germen puede quedarse meses, aunque el oído se vea bien.',
  tellVets: 'Antes de entrar, diga en cada clínica que tiene este germen.',
} as const
