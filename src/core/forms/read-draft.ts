import type { Json } from '#core/journal/canonical.ts'
import { type BodyOf, type KindName, kindNamed } from '#core/journal/fold.ts'
import { answer, type Outcome, refuse } from '#core/outcome/outcome.ts'
import { sayStoredDay } from '#core/time/calendar-day.ts'
import type { Draft } from './draft.ts'
import type { Form } from './form.ts'
import { readGroup } from './read-field.ts'
import type { FieldRefusal, Place } from './refusal.ts'

/**
 * The body that a draft stands for, or for every field that cannot be read what is wrong with it. Nothing is filled in:
 * an answer that is missing is a refusal. What is read must fit the schema of the kind like any other entry.
 *
 * @example readDraft(weightForm, { weight: '27 lb', how: 'scale', bodyCondition: '' }, place)
 */
export function readDraft<Name extends KindName>(
  form: Form<Name>,
  draft: Draft,
  place: Place,
): Outcome<BodyOf<Name>, readonly FieldRefusal[]> {
  const refusals: FieldRefusal[] = []
  const read = readGroup(form.fields, draft, '', { place, refusals })
  if (refusals.length > 0) return refuse(inOrder(refusals, form))
  const kind = kindNamed(form.kind)
  const parsed = kind?.body.safeParse(read)
  if (parsed?.success) return answer(parsed.data as BodyOf<Name>)
  const issues = parsed?.error.issues ?? []
  return refuse(
    inOrder(
      issues.map((issue) => doesNotFit(issue.path.map(String), read, 'params' in issue ? issue.params : undefined)),
      form,
    ),
  )
}

/**
 * What of earlier refusals is still wrong in a draft that was typed on since; a field that can be read now is not
 * named any more, and no other field is named before somebody asks again.
 */
export function stillRefused(
  refusals: readonly FieldRefusal[],
  form: Form,
  draft: Draft,
  place: Place,
): readonly FieldRefusal[] {
  if (refusals.length === 0) return refusals
  const read = readDraft(form, draft, place)
  const named = new Set(refusals.map(({ path }) => path))
  return read.kind === 'answer' ? [] : read.refusal.filter(({ path }) => named.has(path))
}

/** A schema may refuse a part of what one field makes (the value of a quantity); the field is what a person can change. */
function doesNotFit(
  steps: readonly string[],
  body: Json,
  params: Readonly<Record<string, unknown>> = {},
): FieldRefusal {
  const at = steps.filter((step) => !/^\d+$/.test(step)).join('.')
  const given = steps.reduce<unknown>((part, step) => (part as Record<string, unknown> | undefined)?.[step], body)
  const { because, day } = params
  const path = steps.join('.')
  // What a schema knows of days it says itself: why a step does not fit is no riddle for whoever typed it.
  if ((because === 'step-too-early' || because === 'step-too-late') && typeof day === 'string')
    return { path, at, because, about: { given: sayStoredDay(String(given)), day: sayStoredDay(day) } }
  return { path, at, because: 'does-not-fit', about: { given: String(given ?? '') } }
}

/** In the order in which the form asks, so that the first sentence belongs to the first field. */
function inOrder(refusals: readonly FieldRefusal[], form: Form): FieldRefusal[] {
  const paths = form.sections.flatMap(({ fields }) => fields.map(({ at }) => at))
  const rank = ({ at }: FieldRefusal) => {
    const index = paths.findIndex((path) => at === path || at.startsWith(`${path}.`))
    return index < 0 ? paths.length : index
  }
  return [...refusals].sort((a, b) => rank(a) - rank(b))
}
