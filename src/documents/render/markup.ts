/** A piece of a page that is markup already. Pages that the server gives to a browser are made of these; papers have their own model. */
export class Html {
  readonly text: string

  constructor(text: string) {
    this.text = text
  }
}

/** Markup with values in it: texts are escaped, pieces of markup are put in as they are, lists one after the other. */
export function html(parts: TemplateStringsArray, ...values: readonly (string | Html | readonly Html[])[]): Html {
  const texts = values.map((value) => {
    if (typeof value === 'string') return escaped(value)
    return value instanceof Html ? value.text : value.map(({ text }) => text).join('')
  })
  return new Html(parts.map((part, at) => `${part}${texts[at] ?? ''}`).join(''))
}

function escaped(text: string): string {
  return text.replaceAll(/[&<>"']/g, (letter) => `&#${letter.charCodeAt(0)};`)
}
