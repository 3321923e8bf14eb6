import { InputError } from '#actions/input.ts'

/** A row is small; an object longer than this is something else, and would be held in memory whole. */
const longest = 1_000_000

/**
 * The objects of a JSON list, or objects one after the other, each parsed by itself, so that a list of any length is read
 * as it comes.
 *
 * @example jsonObjects(text) // '[{"a":1},{"a":2}]' gives { a: 1 } and { a: 2 }
 */
export async function* jsonObjects(text: AsyncIterable<string>): AsyncGenerator<unknown> {
  let held = ''
  let [depth, begun, inText, escaped, list] = [0, 0, false, false, 'not-begun']
  for await (const piece of text) {
    const from = held.length
    held += piece
    for (let at = from; at < held.length; at += 1) {
      const one = held[at]
      if (inText) {
        if (escaped) escaped = false
        else if (one === '\\') escaped = true
        else if (one === '"') inText = false
      } else if (depth > 0) {
        if (one === '"') inText = true
        else if (one === '{' || one === '[') depth += 1
        else if (one === '}' || one === ']') depth -= 1
        if (depth === 0) {
          yield parsed(held.slice(begun, at + 1))
          begun = at + 1
        }
      } else if (one === '{') {
        depth = 1
        begun = at
      } else if (one === '[' && list === 'not-begun') list = 'open'
      else if (one === ']' && list === 'open') list = 'ended'
      else if (!/[\s,]/.test(one ?? '')) throw notJson(`"${one}" stands between two rows`)
    }
    held = depth > 0 ? held.slice(begun) : ''
    begun = 0
    if (held.length > longest) throw notJson('a row is longer than a row can be')
  }
  if (depth > 0 || list === 'open') throw notJson('it ends in the middle')
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch (error) {
    throw notJson((error as Error).message)
  }
}

function notJson(why: string): InputError {
  return new InputError('not-json', '', `The rows are not JSON objects: ${why}.`)
}
