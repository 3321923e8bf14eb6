import type { Provenance } from '#core/evidence/sourced.ts'
import type { View } from '#core/plate/parameters.ts'
import type { StructureId } from '#core/plate/scene.ts'
import { commonPractice, readStudy, standardAnatomy } from '../follow-up/provenance.ts'

export const plateStepIds = ['inside', 'nerve-and-vessels', 'what-goes', 'lining', 'before', 'after'] as const
export type PlateStepId = (typeof plateStepIds)[number]

/** One still picture of the owner's page: how the ear is seen, what is lifted out of it, how the sentences beside it are known. */
export type PlateStep = {
  readonly id: PlateStepId
  readonly view: View
  /** The ear today, with the lines of the operation, or as the operation would leave it. */
  readonly show: 'today' | 'planned' | 'afterwards'
  /** Null: the whole plate, nothing lifted. */
  readonly lifted: readonly StructureId[] | null
  readonly known: readonly Provenance[]
}

/** The steps in their order; the sentences stand in content/wording/owner-page-plate.ts. */
export const plateSteps: readonly PlateStep[] = [
  {
    id: 'inside',
    view: 'transverse',
    show: 'today',
    lifted: ['opening', 'vertical-canal', 'horizontal-canal', 'drum', 'bulla', 'inner-ear', 'mass'],
    known: [standardAnatomy],
  },
  {
    id: 'nerve-and-vessels',
    view: 'lateral',
    show: 'today',
    lifted: ['facial-nerve', 'nerve-to-lids', 'retroglenoid-vein', 'external-carotid', 'opening', 'vertical-canal'],
    known: [{ sources: ['smeak-inpanbutr-2005'], ...readStudy }, standardAnatomy],
  },
  {
    id: 'what-goes',
    view: 'transverse',
    show: 'planned',
    lifted: ['vertical-canal', 'horizontal-canal', 'opening', 'cut-at-meatus', 'bulla-opening', 'incision'],
    known: [commonPractice],
  },
  {
    id: 'lining',
    view: 'transverse',
    show: 'planned',
    lifted: ['bony-meatus', 'cut-at-meatus', 'bulla', 'bulla-opening', 'leave-alone'],
    known: [
      { sources: ['sharp-1990'], ...readStudy },
      { sources: ['smeak-1996'], ...readStudy },
    ],
  },
  { id: 'before', view: 'transverse', show: 'today', lifted: null, known: [standardAnatomy] },
  { id: 'after', view: 'transverse', show: 'afterwards', lifted: null, known: [commonPractice] },
]
