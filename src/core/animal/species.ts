export type Species = 'dog' | 'cat'
export const speciesList = ['dog', 'cat'] as const
export type Side = 'LEFT' | 'RIGHT'
export const sides = ['LEFT', 'RIGHT'] as const

export function otherSide(side: Side): Side {
  return side === 'LEFT' ? 'RIGHT' : 'LEFT'
}
