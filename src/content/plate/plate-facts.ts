import type { PlateFacts } from '#core/plate/facts.ts'
import { catLateral } from './cat-lateral.ts'
import { catTransverse } from './cat-transverse.ts'
import { dogLateral } from './dog-lateral.ts'
import { dogTransverse } from './dog-transverse.ts'
import { drawn } from './provenance.ts'

/** No validated grade of narrowing was found: a grade is drawn by the largest loss of area its name covers, and never printed. */
export const plateFacts = {
  dog: { transverse: dogTransverse, lateral: dogLateral },
  cat: { transverse: catTransverse, lateral: catLateral },
  areaLost: { value: { none: 0, mild: 0.25, moderate: 0.5, severe: 0.75, closed: 1 }, ...drawn },
  thickWallTimes: { value: 2.4, ...drawn },
} as const satisfies PlateFacts
