import { createElement, type ReactNode } from 'react'
import { node, type SvgNode } from '#core/plate/svg-node.ts'

/** A drawn node as React shows it. Presentation attributes only, never a style: the content-security policy forbids it. */
export function svgElement({ tag, attributes, children }: SvgNode, key: number): ReactNode {
  const given = Object.entries(attributes).map(([name, value]) => [inReact(name), value])
  return createElement(
    tag,
    { key, ...Object.fromEntries(given) },
    ...children.map((child, index) => (typeof child === 'string' ? child : svgElement(child, index))),
  )
}

/** `stroke-width` is `strokeWidth` in React; `aria-…` stays. */
function inReact(name: string): string {
  if (name.startsWith('aria-')) return name
  return name.replace(/-([a-z])/g, (_, letter: string) => letter.toUpperCase())
}

/** Lines without a word for a screen reader: the words stand in the description. */
export function silent(nodes: readonly SvgNode[]): SvgNode {
  return node('g', { 'aria-hidden': 'true' }, nodes)
}
