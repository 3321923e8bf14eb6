import { z } from 'zod'
import { mainReasons } from '#core/animal/main-reason.ts'
import { procedureIds } from '#core/animal/procedure.ts'
import { id, moment, shortText, side, text } from '../answers.ts'
import type { Json } from '../canonical.ts'
import { defineKind } from '../kind.ts'

/** The surgeon's signed summary; what arrives later about this operation is marked late. */
export const operationSummary = defineKind({
  name: 'operation-summary',
  version: 2,
  subjects: ['operation'],
  body: z.strictObject({
    side,
    procedure: z.enum(procedureIds),
    surgeon: id,
    assistant: id.nullable(),
    anaesthetist: id.nullable(),
    incisionAt: moment,
    closedAt: moment,
    /** What results are counted by; null: nobody said it. The words of the indication are never read for it. */
    mainReason: z.enum(mainReasons).nullable(),
    indication: text,
    findings: text,
    complications: z.array(
      z.enum(['bleeding', 'nerve-cut', 'nerve-stretched', 'low-pressure', 'arrest', 'airway', 'other']),
    ),
    drain: z.boolean(),
    plan: text,
    signedBy: id,
    remark: shortText.nullable(),
  }),
  /** Version 1 had the indication in words only. */
  upcasts: { 1: (older) => ({ ...(older as Record<string, Json>), mainReason: null }) },
  naturalKey: (_, subject) => (subject.kind === 'operation' ? subject.operation : undefined),
  example: {
    side: 'LEFT',
    procedure: 'teca-lbo',
    surgeon: 'person-surgeon',
    assistant: null,
    anaesthetist: 'person-anaesthetist',
    incisionAt: { at: '2026-02-10T09:40:00.000Z', zone: 'Europe/London', precision: 'minute', by: 'person' },
    closedAt: { at: '2026-02-10T11:05:00.000Z', zone: 'Europe/London', precision: 'minute', by: 'person' },
    mainReason: 'chronic-otitis',
    indication: 'Closed, mineral canal with filled bulla.',
    findings: 'Bulla filled with debris; lining removed, dorsomedial wall left.',
    complications: [],
    drain: false,
    plan: 'Ward overnight; culture from the bulla expected in five days.',
    signedBy: 'person-surgeon',
    remark: null,
  },
})
