import { expect, it } from 'vitest'
import { dueInWard } from './due-list.ts'

const now = '2026-02-11T00:30:00.000Z'
const item = (
  id: string,
  what: 'ward-pain' | 'ward-airway' | 'face-and-eye-look' | 'suture-check',
  from: string,
  by: string,
) => ({
  id,
  what,
  dueFrom: `2026-02-${from}:00.000Z`,
  dueBy: `2026-02-${by}:00.000Z`,
})

it('stands longest overdue first, then what may be done now, then what comes, over midnight too', () => {
  const items = [
    item('next', 'ward-pain', '11T03:00', '11T05:00'),
    item('now', 'ward-airway', '11T00:00', '11T01:00'),
    item('late', 'ward-pain', '10T22:00', '11T00:00'),
    item('later', 'ward-airway', '10T23:00', '10T23:10'),
  ]
  expect(dueInWard(items, now).map(({ item: { id }, band, minutesLate }) => [id, band, minutesLate])).toEqual([
    ['later', 'late', 80],
    ['late', 'late', 30],
    ['now', 'now', 0],
    ['next', 'next', 0],
  ])
})

it('leaves out what does not belong to the ward, and what begins more than a day ahead', () => {
  const items = [
    item('stitches', 'suture-check', '10T00:00', '10T01:00'),
    item('day-3', 'face-and-eye-look', '13T00:00', '13T23:59'),
  ]
  expect(dueInWard(items, now)).toEqual([])
})
