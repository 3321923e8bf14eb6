import type { FormArrangement } from '#core/forms/arrangement.ts'

/** One item of a spoken pause. */
export const pauseItem = {
  kind: 'pause-item',
  place: 'case',
  chapters: ['Theatre'],
  writtenBy: ['nurse', 'surgeon', 'anaesthetist'],
  amendable: true,
  sections: [{ id: 'item', fields: ['pause', 'item', 'answer', 'because', 'spokenBy', 'ledBy'] }],
  fields: {
    pause: { empties: 'item' },
    item: {
      register: 'pause-item',
      free: true,
      shownWhen: {
        field: 'pause',
        is: ['before-anaesthesia', 'before-incision', 'before-second-ear', 'before-leaving'],
      },
    },
    because: { shownWhen: { field: 'answer', is: ['no', 'unknown'] } },
    spokenBy: { register: 'person' },
    ledBy: { register: 'person' },
  },
} as const satisfies FormArrangement
