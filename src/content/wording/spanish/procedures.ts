import type { ProcedureId } from '#core/animal/procedure.ts'

/** Operations as they stand on what an owner signs, in Spanish. */
export const procedureNamesInSpanish = {
  'lateral-wall-resection': 'Resección de la pared lateral del canal del oído',
  'subtotal-ablation': 'Ablación subtotal del canal del oído',
  'teca-lbo': 'Ablación total del canal del oído con osteotomía lateral de la bulla (TECA-LBO)',
  traction: 'Extracción de un pólipo por tracción',
  'ventral-bulla-osteotomy': 'Osteotomía ventral de la bulla',
  'vertical-canal-ablation': 'Ablación del canal vertical del oído',
} as const satisfies Record<ProcedureId, string>
