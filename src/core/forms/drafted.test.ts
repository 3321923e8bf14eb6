import { expect, test } from 'vitest'
import {
  changedSince,
  draftAnew,
  draftInto,
  isOnlyDrafted,
  markRead,
  unreadFields,
  type WithDrafted,
} from './drafted.ts'

const empty: WithDrafted = { body: { side: '', findings: '', remark: '' }, drafted: null }
const first = { side: 'LEFT', findings: 'The nerve was seen.' }
const opened = draftInto(empty, first, 'operation-1')
const typed = (form: WithDrafted, field: string, text: string): WithDrafted => ({
  ...form,
  body: { ...(form.body as object), [field]: text },
})
const read = (form: WithDrafted, ...fields: string[]): WithDrafted => ({
  ...form,
  drafted: form.drafted && markRead(form.drafted, fields),
})

test('What can be drafted stands in the form and is unread; nothing else is touched', () => {
  expect(opened.body).toEqual({ side: 'LEFT', findings: 'The nerve was seen.', remark: '' })
  expect(unreadFields(opened)).toEqual(['side', 'findings'])
  expect(unreadFields(draftInto(empty, { side: '', findings: '' }, 'operation-1'))).toEqual([])
})

test('A field is read once somebody says so or types in it', () => {
  expect(unreadFields(read(opened, 'side'))).toEqual(['findings'])
  expect(unreadFields(typed(opened, 'findings', 'The nerve was seen and lay free.'))).toEqual(['side'])
})

test('What was typed before it could be drafted is left, and is not called drafted', () => {
  const form = draftInto(typed(empty, 'findings', 'Mine.'), first, 'operation-1')
  expect(form.body).toMatchObject({ findings: 'Mine.' })
  expect(unreadFields(form)).toEqual(['side'])
})

test('A later stamp overwrites neither what was typed nor what was read; it is offered', () => {
  const later = { side: 'LEFT', findings: 'The nerve was seen. It lay free.' }
  for (const form of [typed(opened, 'findings', 'Mine.'), read(opened, 'findings')]) {
    const again = draftInto(form, later, 'operation-1')
    expect(again.body).toEqual(form.body)
    expect(changedSince(again, later)).toEqual(['findings'])
    const anew = draftAnew(again, later, 'findings')
    expect(anew.body).toMatchObject({ findings: later.findings })
    expect(unreadFields(anew)).toContain('findings')
    expect(changedSince(anew, later)).toEqual([])
  }
})

test('What nobody touched is drafted again on opening', () => {
  const later = { side: 'LEFT', findings: 'The nerve was cut.' }
  expect(changedSince(opened, later)).toEqual(['findings'])
  expect(draftInto(opened, later, 'operation-1').body).toMatchObject({ findings: 'The nerve was cut.' })
})

test('A draft that was emptied by hand stays empty', () => {
  expect(draftInto(typed(opened, 'findings', ''), first, 'operation-1').body).toMatchObject({ findings: '' })
})

test('Another operation drafts what nobody typed anew, to be read again', () => {
  const form = typed(read(opened, 'side'), 'findings', 'Mine.')
  const other = draftInto(form, { side: 'RIGHT', findings: 'Other.' }, 'operation-2')
  expect(other.body).toMatchObject({ side: 'RIGHT', findings: 'Mine.' })
  expect(unreadFields(other)).toEqual(['side'])
})

test('A form nobody touched is not what somebody typed', () => {
  expect(isOnlyDrafted(opened, empty.body)).toBe(true)
  expect(isOnlyDrafted(read(opened, 'side'), empty.body)).toBe(false)
  expect(isOnlyDrafted(typed(opened, 'remark', 'Mine.'), empty.body)).toBe(false)
})
