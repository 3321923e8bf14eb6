import type { Untold } from '#core/antibiogram/antibiogram.ts'
import type { AntibiogramMethod } from '#core/antibiogram/method.ts'

/** How a table of what grows was made, and what stands beside it. */
export const antibiogramInEnglish = {
  first: {
    'calendar-year':
      'The first isolate of each animal and organism in each calendar year counts, whatever its place and its pattern.',
    episode:
      'The first isolate of each animal and organism counts, and the next one that was taken {days} days after it or later.',
    phenotype:
      'The first isolate of each animal and organism counts, the next one that was taken {days} days after it or later, and between them each one whose pattern differs from the last one counted by {threshold} points: S to R is {full}, a step to or from the middle {half}.',
  } satisfies Record<AntibiogramMethod['first']['kind'], string>,
  threshold: { exceeded: 'more than {points}', reached: 'at least {points}' },
  share:
    'The share is S alone, of the isolates that have a category by {standard}. The interval is 95 % (Wilson). What cannot be told, has no breakpoint or was not tested stands beside it.',
  sites: {
    together: 'Isolates of all places of sampling stand together.',
    apart: 'First isolates were chosen first and then told apart by the place of sampling.',
    each: 'Each place of sampling has its own first isolates, so that one animal can count in several places.',
  } satisfies Record<AntibiogramMethod['sites'], string>,
  notes: {
    'second-hand':
      'The breakpoints were copied from what others print of the standards; compare them with your own copy before you rely on them.',
    'first-dose-only':
      'A table like this guides the first dose while the culture grows. It never stands above the culture of the animal itself.',
    'systemic-only':
      'All categories speak of drugs given by mouth or injection; they say nothing about drops in the ear.',
    'places-together':
      'The rows name several places of sampling ({places}), and all stand together here. Ask for them apart.',
    'several-years': 'The years {years} stand together.',
    'category-only':
      'Results counted from a category that was printed without its value: {count}. They stand as the laboratories wrote them in {years}, by whatever edition was in use then, and cannot be read again.',
    'organisms-not-known': 'Nobody here knows these organisms, so none of their drugs was read: {names}.',
    'drugs-not-known': 'Nobody here knows these drugs, so they were not read: {names}.',
    'purpose-not-said': 'Rows without a purpose: {count}. They were taken as samples of ill animals.',
    'columns-not-read': 'Columns that were not read: {names}.',
    'nothing-counted': 'No isolate counts.',
  },
  leftOut: {
    screening: 'samples of healthy carriers',
    environment: 'samples of rooms and things',
    'repeat-check': 'samples after treatment, to see a cure',
    preliminary: 'preliminary reports',
    'other-animal': 'animals that are neither dog nor cat',
    'outside-period': 'outside the period',
    repeat: 'later isolates of the same animal and organism',
  },
  years: '{from} to {until}',
  needs: '{share} (the standard assumes {dose})',
  untold: {
    intrinsic: 'resistant by nature',
    'tested-only-on-resistant': 'no share: tested only where other drugs had failed',
    'below-minimum': 'no share: fewer than {minimum}',
    'no-category': 'no share: none has a category',
  } satisfies Record<Untold, string>,
  flag: 'fewer than {flagBelow}',
  notKnown: 'not read: nobody here knows it',
  columns: {
    drug: 'drug',
    counted: 'S of n',
    share: 'S',
    interval: '95 % interval',
    beside: 'beside it',
  },
  counts: {
    sdd: 'SDD {count}',
    i: 'I {count}',
    ns: 'NS {count}',
    notInterpretable: 'not to be told {count}',
    noBreakpoint: 'no breakpoint {count}',
    notTested: 'not tested {count}',
    categoryOnly: 'without its value {count}',
  },
  isolates: { one: '1 isolate', many: '{count} isolates' },
  fallback: 'By a breakpoint of people or of another animal, apart from the table above and never a category:',
  hosts: { dog: 'Dogs', cat: 'Cats' },
  leftOutOf: 'Rows read: {read}. Left out: {list}.',
  noneLeftOut: 'Rows read: {read}. None was left out.',
} as const
