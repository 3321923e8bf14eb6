import type { Source } from '#core/evidence/sourced.ts'

export const smallCanalMasses2016 = {
  id: 'small-canal-masses-2016',
  citation:
    'Twenty-five tumours of the ear canal in one practice, 2001–2015. Jpn J Vet Anesth Surg 47(4):59 (authors not shown on the page read)',
  seenAt: 'abstract at jstage.jst.go.jp',
  strength: 'study',
} as const satisfies Source
