import { createElement } from 'react'
import { renderToStaticMarkup } from 'react-dom/server'
import { describe, expect, it } from 'vitest'
import { tecaLbo } from '#content/procedures/teca-lbo.ts'
import type { Draft } from '#core/forms/draft.ts'
import { draftOf } from '#core/forms/draft-of.ts'
import { emptyDraft } from '#core/forms/empty-draft.ts'
import type { Field } from '#core/forms/field.ts'
import { readDraft } from '#core/forms/read-draft.ts'
import type { FieldRefusal, Place } from '#core/forms/refusal.ts'
import { isRelevant } from '#core/forms/relevant.ts'
import { wordsAt } from '#core/forms/words.ts'
import type { BodyOf, KindName } from '#core/journal/fold.ts'
import { kinds } from '#core/journal/kinds/index.ts'
import { EntryForm } from './entry-form.tsx'
import { formFor, wordsFor } from './forms.ts'
import { PairedEntryForm } from './paired-entry-form.tsx'
import { sayRefusal } from './say-refusal.ts'
import type { FormChoices } from './scope.ts'

const place: Place = { zone: 'Europe/London', decimalMark: '.', currency: 'GBP' }
const choices: FormChoices = {
  registers: {
    person: [{ id: 'person-surgeon', label: 'Anna Holm' }],
    drug: [{ id: 'bupivacaine', label: 'Bupivacaine' }],
  },
  entries: () => [{ id: '0190a7c2-0000-7000-8000-000000000001', label: 'Specimen B-1 of 12 January 2026' }],
  checkpoints: tecaLbo.checkpoints,
}

function draw(kind: KindName, draft: Draft, refusals: readonly FieldRefusal[] = []): string {
  return renderToStaticMarkup(createElement(EntryForm, { kind, draft, refusals, place, choices, onDraft: () => {} }))
}

function example(name: KindName): Draft {
  const kind = kinds.find((one) => one.name === name)
  return draftOf(formFor(name), kind?.example as BodyOf<KindName>, place)
}

/** Controls without a name that a person can hear: neither a label around them nor one that points to them. */
function nameless(html: string): string[] {
  const inLabels = new Set(
    [...html.matchAll(/<label[^>]*>(?:(?!<\/label>).)*?(<input[^>]*>)/g)].map(([, input]) => input),
  )
  const labelled = new Set([...html.matchAll(/<label for="([^"]+)"/g)].map(([, id]) => id))
  return [...html.matchAll(/<(?:input|select|textarea)[^>]*>/g)]
    .map(([tag]) => tag)
    .filter((tag) => !inLabels.has(tag) && !labelled.has(/ id="([^"]+)"/.exec(tag)?.[1] ?? ''))
}

/** Ids that are told of (described by, labelled by, for) and are not there, or are there twice. */
function brokenIds(html: string): string[] {
  const ids = [...html.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id)
  const told = [...html.matchAll(/ (?:aria-describedby|aria-labelledby|for)="([^"]+)"/g)].flatMap(([, list]) =>
    list?.split(' '),
  )
  return [...told.filter((id) => !ids.includes(id)), ...ids.filter((id, at) => ids.indexOf(id) !== at)] as string[]
}

function shownFields(fields: readonly Field[], draft: Draft): Field[] {
  return fields
    .filter(({ control }) => control.kind !== 'answered-by' && control.kind !== 'plan-fingerprint')
    .filter((field) => isRelevant(field, draft))
}

const names = kinds.map(({ name }) => name)

describe('the form of an entry on the screen', () => {
  it.each(names)('names every control of %s, empty and filled in', (name) => {
    for (const draft of [emptyDraft(formFor(name)), example(name)]) {
      const html = draw(name, draft)
      expect(nameless(html)).toEqual([])
      expect(brokenIds(html)).toEqual([])
      expect(html).not.toMatch(/ style="/)
    }
  })

  it.each(names)('shows the label of every field that %s asks for', (name) => {
    const form = formFor(name)
    const draft = example(name)
    const html = draw(name, draft).replaceAll('&#x27;', "'").replaceAll('&amp;', '&')
    for (const { at, control } of shownFields(form.fields, draft)) {
      if (control.kind === 'group' || (control.kind === 'carried' && !wordsAt(wordsFor(name), at)?.help)) continue
      expect(html, at).toContain(wordsAt(wordsFor(name), at)?.label)
    }
  })

  it.each(names)('says beside the fields and above the form of %s what is wrong, when nothing was answered', (name) => {
    const draft = emptyDraft(formFor(name))
    const read = readDraft(formFor(name), draft, place)
    if (read.kind === 'answer') throw new Error(`${name} was answered beforehand.`)
    const html = draw(name, draft, read.refusal)
    expect(brokenIds(html)).toEqual([])
    const first = read.refusal[0] as FieldRefusal
    expect(html).toContain(sayRefusal(first, wordsFor(name)))
    expect(html).toMatch(/<a href="#/)
  })

  it('chooses no option for anybody', () => {
    for (const name of names) expect(draw(name, emptyDraft(formFor(name))), name).not.toMatch(/ checked=""/)
  })
})

describe('both ears', () => {
  const refusals = { LEFT: [], RIGHT: [] }
  const both = (LEFT: Draft, RIGHT: Draft) =>
    renderToStaticMarkup(
      createElement(PairedEntryForm, {
        kind: 'ear-findings',
        drafts: { LEFT, RIGHT },
        refusals,
        place,
        choices,
        onDrafts: () => {},
      }),
    )

  it('stand beside each other under the words LEFT and RIGHT, with controls of their own', () => {
    const html = both(example('ear-findings'), emptyDraft(formFor('ear-findings')))
    expect([...html.matchAll(/<h2[^>]*>(LEFT|RIGHT)<\/h2>/g)].map(([, side]) => side)).toEqual(['LEFT', 'RIGHT'])
    expect(nameless(html)).toEqual([])
    expect(brokenIds(html)).toEqual([])
  })

  it('show the OTIS-3 total of the ear that was graded, and no total for the other', () => {
    const html = both(example('ear-findings'), emptyDraft(formFor('ear-findings')))
    expect(html).toContain('OTIS-3 total 11 of 12')
    expect(html).toContain('OTIS-3: no sign graded yet')
  })
})

describe('the weight', () => {
  it('is shown in kg and lb while it is typed', () => {
    expect(draw('weight', { weight: '27 lb', how: '', bodyCondition: '' })).toContain('12.25 kg (27 lb)')
  })
})
