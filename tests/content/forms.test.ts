import { describe, expect, it } from 'vitest'
import { forms } from '#content/forms/index.ts'
import { formsInEnglish } from '#content/wording/app-form-words.ts'
import { formWords } from '#content/wording/app-forms/index.ts'
import { kindsInEnglish } from '#content/wording/app-kinds.ts'
import type { Field } from '#core/forms/field.ts'
import { formOf } from '#core/forms/form.ts'
import { type FormWords, optionWord, wordsAt } from '#core/forms/words.ts'
import { kinds } from '#core/journal/kinds/index.ts'
import { mayWrite } from '#core/people/may-write.ts'

const names = kinds.map(({ name }) => name)

function wordsOf(kind: string): FormWords {
  const found = formWords.find((words) => words.kind === kind)
  if (!found) throw new Error(`No words are written for the form of ${kind}.`)
  return found
}

/** Every field of a form with the fields inside its groups and lists. */
function everyField(fields: readonly Field[]): Field[] {
  return fields.flatMap((field) => {
    const inside = 'fields' in field.control ? everyField(field.control.fields) : []
    return field.control.kind === 'answered-by' ? [] : [field, ...inside]
  })
}

/** What stands on the screen for one field and has no word: `path`, `path: option`, `path (none)`. */
function wordless(field: Field, words: FormWords): string[] {
  const { at, control } = field
  const own = wordsAt(words, at)
  if (!own) return [at]
  const options = 'options' in control ? control.options : []
  const lacking = options.filter((option) => optionWord(own, formsInEnglish.options, option) === undefined)
  const found = [...new Set(lacking)].filter((option) => !/^\d$/.test(option)).map((option) => `${at}: ${option}`)
  if (control.kind === 'rows') found.push(...wordlessRows(field, words))
  if (needsNone(field) && own.none === undefined) found.push(`${at} (none)`)
  if (control.kind === 'list' && (!own.add || !own.item)) found.push(`${at} (add, item)`)
  if (control.kind === 'group' && field.nullable && !own.open) found.push(`${at} (open)`)
  return found
}

function wordlessRows({ at, control }: Field, words: FormWords): string[] {
  if (control.kind !== 'rows') return []
  const parts = [
    [`${at}.${control.item}`, control.rows],
    [`${at}.${control.answer}`, control.answers],
  ] as const
  return parts.flatMap(([path, options]) =>
    options
      .filter((option) => optionWord(wordsAt(words, path), formsInEnglish.options, option) === undefined)
      .map((option) => `${path}: ${option}`),
  )
}

/** Choosing nothing is an answer with a word of its own wherever it is offered as one. */
function needsNone({ blank, nullable, control }: Field): boolean {
  if (blank === 'none' || blank === 'not-assessed') return true
  const offered = ['choice', 'select', 'suggested', 'from-register', 'entry']
  return nullable && offered.includes(control.kind)
}

describe('the forms', () => {
  it('are one for every kind, arranged, named and worded', () => {
    expect(forms.map(({ kind }) => kind)).toEqual([...names].sort())
    expect(formWords.map(({ kind }) => kind)).toEqual([...names].sort())
    for (const { purpose } of formWords) expect(purpose).toMatch(/^[A-Z].*\.$/)
    for (const name of names) expect(kindsInEnglish[name]).toBeTruthy()
  })

  it.each(names)('of %s have a word for every section, field and option', (name) => {
    const arrangement = forms.find(({ kind }) => kind === name)
    if (!arrangement) throw new Error(name)
    const form = formOf(arrangement)
    const words = wordsOf(name)
    expect(everyField(form.fields).flatMap((field) => wordless(field, words))).toEqual([])
    expect(form.sections.map(({ id }) => id).filter((id) => !words.sections[id])).toEqual([])
  })

  it.each(names)('of %s hold no word for a field, section or option that is not there', (name) => {
    const arrangement = forms.find(({ kind }) => kind === name)
    if (!arrangement) throw new Error(name)
    const form = formOf(arrangement)
    const there = new Set(
      everyField(form.fields).flatMap(({ at, control }) => [
        at,
        at.replace(/^(LEFT|RIGHT)\b/, 'side'),
        ...(control.kind === 'rows' ? [`${at}.${control.item}`, `${at}.${control.answer}`] : []),
        ...(control.kind === 'subject'
          ? ['household', 'animal', 'side', 'operation'].map((part) => `${at}.${part}`)
          : []),
      ]),
    )
    const words = wordsOf(name)
    expect(Object.keys(words.fields).filter((path) => !there.has(path))).toEqual([])
    const sections = form.sections.map(({ id }) => id)
    expect(Object.keys(words.sections).filter((id) => !sections.includes(id))).toEqual([])
  })

  it('say what would be right wherever a text must have a certain shape', () => {
    const wrongless = kinds.flatMap((kind) => {
      const words = wordsOf(kind.name)
      const arrangement = forms.find((form) => form.kind === kind.name)
      if (!arrangement) return [kind.name]
      return everyField(formOf(arrangement).fields)
        .filter(({ control }) => control.kind === 'text')
        .filter(({ at }) => shaped(kind.body, at) && !wordsAt(words, at)?.wrong)
        .map(({ at }) => `${kind.name}.${at}`)
    })
    expect(wrongless).toEqual([])
  })

  it('are offered to nobody who may not write their kind', () => {
    const offered = forms.flatMap(({ kind, writtenBy }) =>
      writtenBy
        .filter((role) => !(mayWrite[kind] as readonly string[]).includes(role))
        .map((role) => `${kind}: ${role}`),
    )
    expect(offered).toEqual([])
  })
})

type Described = {
  shape?: Record<string, Described>
  def?: { innerType?: Described; element?: Described }
  format?: string | null
}

/** True when the schema of a text field holds a pattern. */
function shaped(schema: unknown, at: string): boolean {
  const at1 = at.split('.').reduce<Described | undefined>((part, step) => {
    const inside = unwrapped(part)
    return (inside?.def?.element ? unwrapped(inside.def.element) : inside)?.shape?.[step]
  }, schema as Described)
  return unwrapped(at1)?.format === 'regex'
}

function unwrapped(schema: Described | undefined): Described | undefined {
  return schema?.def?.innerType ? unwrapped(schema.def.innerType) : schema
}
