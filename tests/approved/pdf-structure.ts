import { execFileSync } from 'node:child_process'

/** One element of the structure tree of a PDF, as an independent reader finds it in the file. */
export type Tagged = {
  readonly tag: string
  readonly title: string | null
  readonly alt: string | null
  readonly language: string | null
  /** Which columns or rows the element heads, and the ids of the heads of a cell. */
  readonly scope: string | null
  readonly id: string | null
  readonly heads: readonly string[]
  readonly inside: readonly Tagged[]
}

export type Structure = {
  readonly language: string | null
  readonly title: string | null
  /** Whether a reader shows the title instead of the name of the file. */
  readonly showsTitle: boolean
  readonly top: readonly Tagged[]
}

type Raw = null | boolean | number | string | readonly Raw[] | { readonly [key: string]: Raw }
type Dictionary = { readonly [key: string]: Raw }

/** The structure tree of a PDF read back by qpdf: catalog, title and every tag in reading order. */
export function structureOf(file: string): Structure {
  const objects = objectsOf(file)
  const follow = (raw: Raw | undefined): Raw => {
    const found = typeof raw === 'string' && / R$/.test(raw) ? objects.get(`obj:${raw}`) : raw
    return found ?? null
  }
  const dictionary = (raw: Raw | undefined): Dictionary => {
    const found = follow(raw)
    return found !== null && typeof found === 'object' && !Array.isArray(found) ? (found as Dictionary) : {}
  }
  const many = (raw: Raw | undefined): readonly Raw[] => {
    const found = follow(raw)
    return Array.isArray(found) ? found : found === null ? [] : [found]
  }
  const tagged = (raw: Raw): readonly Tagged[] => {
    const element = dictionary(raw)
    // Pieces of a page and links to annotations have no tag of their own.
    if (element['/S'] === undefined) return []
    const attributes = Object.assign({}, ...many(element['/A']).map(dictionary)) as Dictionary
    return [
      {
        tag: nameIn(element['/S']) ?? '',
        title: textIn(follow(element['/T'])),
        alt: textIn(follow(element['/Alt'])),
        language: textIn(follow(element['/Lang'])),
        scope: nameIn(follow(attributes['/Scope'])),
        id: textIn(follow(element['/ID'])),
        heads: many(attributes['/Headers']).flatMap((one) => textIn(one) ?? []),
        inside: many(element['/K']).flatMap(tagged),
      },
    ]
  }
  const trailer = dictionary(objects.get('trailer'))
  const catalog = dictionary(trailer['/Root'])
  return {
    language: textIn(follow(catalog['/Lang'])),
    title: textIn(follow(dictionary(trailer['/Info'])['/Title'])),
    showsTitle: dictionary(catalog['/ViewerPreferences'])['/DisplayDocTitle'] === true,
    top: many(dictionary(catalog['/StructTreeRoot'])['/K']).flatMap(tagged),
  }
}

/** Every element with that tag, in reading order. */
export function allTagged(some: readonly Tagged[], wanted: RegExp): Tagged[] {
  return some.flatMap((one) => [...(wanted.test(one.tag) ? [one] : []), ...allTagged(one.inside, wanted)])
}

/** Whoever calls this makes sure that it is there. */
const reader = 'qpdf'

function objectsOf(file: string): Map<string, Raw> {
  const said = execFileSync(reader, ['--json', '--json-key=qpdf', file], { encoding: 'utf8', maxBuffer: 1 << 26 })
  const [, objects] = (JSON.parse(said) as { readonly qpdf: readonly [unknown, Record<string, { value?: Raw }>] }).qpdf
  return new Map(Object.entries(objects).map(([name, { value }]) => [name, value ?? null]))
}

/** qpdf writes a text as `u:` and its letters, other bytes as `b:` and their digits, a name with its stroke. */
function textIn(raw: Raw): string | null {
  return typeof raw === 'string' && /^[ub]:/.test(raw) ? raw.slice(2) : null
}

function nameIn(raw: Raw | undefined): string | null {
  return typeof raw === 'string' && raw.startsWith('/') ? raw.slice(1) : null
}
