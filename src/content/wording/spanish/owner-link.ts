/** Between the pages behind a private link, in Spanish. */
export const ownerLinkInSpanish = {
  pages: 'Páginas de {name}',
  home: 'Ahora, en casa',
  before: 'Las opciones, como antes',
  leaflet: 'Nuestro folleto, para guardar o imprimir (PDF)',
  wentHome: '{name} fue a casa el {date}.',
  asOf: 'Esta página tal como estaba el {date}.',
  checking: 'Estamos revisando las medicinas',
  checkingText:
    'Aquí se está revisando la lista de medicinas, por eso ahora no se muestra. Siga el último papel que le dimos. ¿No sabe qué dar? Llámenos antes de darlo.',
  quiet: {
    title: '{name}',
    text: 'Sentimos la muerte de {name}. Aquí ya no tiene que hacer nada más, y no le preguntamos nada.',
    talk: 'Si quiere hablar, o quiere saber algo, llámenos.',
  },
} as const
