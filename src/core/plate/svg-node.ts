/** One SVG element as plain data, so that a file and a screen are made from the same drawing. */
export type SvgNode = {
  readonly tag: string
  readonly attributes: Readonly<Record<string, string>>
  readonly children: readonly (SvgNode | string)[]
}

export function node(
  tag: string,
  attributes: Readonly<Record<string, string | null>>,
  children: readonly (SvgNode | string)[] = [],
): SvgNode {
  const given = Object.entries(attributes).filter((pair): pair is [string, string] => pair[1] !== null)
  return { tag, attributes: Object.fromEntries(given), children }
}

/** The element and all inside it as text. */
export function svgText({ tag, attributes, children }: SvgNode): string {
  const written = Object.entries(attributes).map(([name, value]) => ` ${name}="${escaped(value)}"`)
  const open = `<${tag}${written.join('')}`
  if (children.length === 0) return `${open}/>`
  const inside = children.map((child) => (typeof child === 'string' ? escaped(child) : svgText(child)))
  return `${open}>${inside.join('')}</${tag}>`
}

function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;')
}
