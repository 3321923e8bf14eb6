/** The operations this tool knows. A new one joins here; the compiler then points at every place that must take a stand. */
export const procedureIds = [
  'teca-lbo',
  'ventral-bulla-osteotomy',
  'traction',
  'lateral-wall-resection',
  'vertical-canal-ablation',
  'subtotal-ablation',
] as const
export type ProcedureId = (typeof procedureIds)[number]
