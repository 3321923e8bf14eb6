import { createElement, type ReactNode } from 'react'
import { renderToStaticMarkup } from 'react-dom/server'
import { beforeAll, describe, expect, it, vi } from 'vitest'
import { Router } from 'wouter'
import { caseInEnglish, readingInEnglish } from '#content/wording/app-case.ts'
import type { Field } from '#core/forms/field.ts'
import { optionWord, wordsAt } from '#core/forms/words.ts'
import { caseFileOf } from '#core/journal/case-file.ts'
import { sealAll } from '#core/journal/chain.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry, StoredEntry } from '#core/journal/entry.ts'
import { type KindName, kindNamed } from '#core/journal/fold.ts'
import { kinds } from '#core/journal/kinds/index.ts'
import { moss } from '#demo/cat.ts'
import { demoClinic, practiceChart, registerRows } from '#demo/practice.ts'
import { tansy } from '#demo/spaniel.ts'
import { formFor, wordsFor } from '../../forms/forms.ts'
import type { OpenCase } from '../../journal/cases.ts'
import { session } from '../../session/session.ts'
import { CaseContext, type CaseView, caseViewOf } from './case-view.ts'
import { EntryLine } from './entry.tsx'
import { CasePage } from './screen.tsx'

// Node has no storage of a browser; the pages only ask it for the name of this device.
vi.hoisted(() => {
  const kept = new Map<string, string>()
  const storage = {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, to: string) => kept.set(key, to),
  }
  Object.assign(globalThis, { localStorage: storage })
})

type Foldable = Entry | StoredEntry

function opened(entries: readonly Foldable[], stream: string, unsent: readonly string[] = []): OpenCase {
  const rows = registerRows()
  const file = caseFileOf({ clinic: demoClinic, rows, entries: [...practiceChart().entries, ...entries] }, stream)
  if (!file) throw new Error('The practice has no clinic line.')
  return { file, keptAside: [], rows: [], unsent: new Set(unsent) }
}

function textOf(element: ReactNode): string {
  // biome-ignore lint/correctness/noChildrenProp: the type of the router wants its children among its properties
  return renderToStaticMarkup(createElement(Router, { ssrPath: '/case/one', children: element }))
    .replaceAll(/<[^>]+>/g, ' ')
    .replaceAll('&#x27;', "'")
    .replaceAll('&amp;', '&')
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll(/\s+/g, ' ')
}

function within(view: CaseView, element: ReactNode): string {
  return textOf(createElement(CaseContext, { value: view }, element))
}

function page(entries: readonly Foldable[], stream: string, unsent: readonly string[] = []): string {
  return within(caseViewOf(opened(entries, stream, unsent), 'one'), createElement(CasePage))
}

const ids = /\b(person|contact|operation|animal|household|entry|case)-[a-z0-9]|[0-9a-f]{8}-[0-9a-f]{4}-|‹/

/** Codes of the options of a kind that read differently in words. */
function codesOf(kind: KindName): string[] {
  const words = wordsFor(kind)
  const of = (field: Field): string[] => {
    const { control, at } = field
    if (control.kind === 'group' || control.kind === 'list') return control.fields.flatMap(of)
    const options = 'options' in control ? control.options : []
    return options.filter((code) => /[-_]/.test(code) && optionWord(wordsAt(words, at), {}, code) !== code)
  }
  return formFor(kind).fields.flatMap(of)
}

beforeAll(() => {
  const person = { id: 'person-holm', name: 'Imke Holm', role: 'surgeon', pin: null, keeper: false } as const
  const row = registerRows().find(({ register }) => register === 'clinic')?.body as never
  session.set({
    kind: 'in',
    door: null,
    lapsed: false,
    who: {
      clinic: { id: demoClinic, row },
      invented: true,
      people: [person],
      active: person.id,
      serverTime: '2026-11-25T14:00:00.000Z',
    },
  })
})

describe.each([
  ['Tansy', tansy().entries, 'case:tansy'],
  ['Moss', moss().entries, 'case:moss'],
] as const)('the page of %s', (name, entries, stream) => {
  const view = caseViewOf(opened(entries, stream), 'one')
  const lines = view.file.theCase.lines

  it.each(lines.map((line) => [line.header.kind, line.header.id, line] as const))(
    'says %s %s in words, without a code and without an id',
    (kind, _, line) => {
      const text = within(view, createElement(EntryLine, { line }))
      expect(text).not.toMatch(/undefined|NaN|\[object|\{\w+\}/)
      expect(text).not.toMatch(ids)
      for (const code of codesOf(kind as KindName)) expect(text, code).not.toContain(` ${code} `)
      expect(text.length).toBeGreaterThan(60)
    },
  )

  it('holds every entry that counts, all eight chapters, and the quiet line', () => {
    const text = page(entries, stream)
    expect(text).toContain(name)
    expect(text).not.toMatch(/undefined|NaN|\[object|\{\w+\}/)
    for (const chapter of ['Referral', 'Work-up', 'Choice', 'Agreement', 'Theatre', 'Ward', 'Home', 'Year']) {
      expect(text).toContain(chapter)
    }
    expect(text).toContain('Decision support for licensed veterinary professionals')
    const shown = view.chapters.chapters.flatMap(({ there }) => there)
    for (const line of shown) expect(text).toContain(view.gist(line))
  })
})

describe('the page of a case', () => {
  const make = entryMaker({ clinic: demoClinic, stream: 'case:0001' })

  it('is a page also when nothing at all is known of the animal', () => {
    const text = page([make({ kind: 'note' })], 'case:0001')
    expect(text).toContain(caseInEnglish.untitled)
    expect(text).toContain('not recorded')
    expect(text).not.toMatch(/undefined|NaN|\[object/)
  })

  it('says one entry of every kind, with everything that is owed and missing around it', () => {
    const all = kinds.map(({ name, subjects }) =>
      make({ kind: name, stream: subjects.every((one) => one === 'clinic') ? 'clinic' : 'case:0001' }),
    )
    const text = page(all, 'case:0001')
    expect(text).not.toMatch(/undefined|NaN|\[object|\{\w+\}/)
  })

  it('says what lies only on this device, and what stands against another entry', () => {
    const first = make({ kind: 'weight' })
    const one = make({ kind: 'weight', supersedes: [first.id], reason: 'Digits swapped.' })
    const other = make({ kind: 'weight', supersedes: [first.id], reason: 'Read again.' })
    const text = page([first, one, other], 'case:0001', [other.id])
    expect(text).toContain(caseInEnglish.badges.unsent)
    expect(text).toContain(caseInEnglish.badges.conflict)
    expect(text).toContain(caseInEnglish.conflicts.one)
    expect(text).toContain(caseInEnglish.head.doubted)
    expect(text).toContain(caseInEnglish.chapter.before.one)
  })

  it('keeps an entry of a newer program in sight, and one whose content was erased', () => {
    const newer = { ...make({ kind: 'note' }), kind: 'from-tomorrow', body: { anything: 'at all' } }
    const [stored] = sealAll([make({ kind: 'note' })], (entry) => entry.writtenAt)
    if (!stored) throw new Error('Nothing was sealed.')
    const erased = { ...stored, body: null, erased: { on: '2026-03-05', by: 'person-holm' } }
    const text = page([newer, erased], 'case:0001')
    expect(text).toContain(readingInEnglish.unknown)
    expect(text).toContain(caseInEnglish.badges.erased)
    expect(text).not.toContain('at all')
  })

  it('shows every source of a side where they disagree', () => {
    const animal = { kind: 'animal', animal: 'animal-1' } as const
    const booking = kindNamed('booking')?.example as { side: string }
    const entries = [
      make({ kind: 'identity', subject: animal }),
      make({ kind: 'booking', body: { ...booking, side: 'RIGHT' } as never }),
      make({ kind: 'operation-summary' }),
    ]
    const text = page(entries, 'case:0001')
    expect(text).toContain(caseInEnglish.sides.title)
    expect(text).toContain('the booking')
    expect(text).toContain('the signed summary')
  })
})
