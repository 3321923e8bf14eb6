import type { World } from '../action.ts'

/** Letters and digits that nobody takes for another when reading them off a screen; 32, so that a byte favours none. */
const letters = 'ABCDEFGHJKLMNPQRSTUVWXYZ23456789'

/** Drawn by lot, four by four: `K7QD-2MXA-V9RT`; each four are 20 bits. */
export function drawnCode({ bytes }: Pick<World['secrets'], 'bytes'>, fours: number): string {
  const drawn = [...bytes(fours * 4)].map((byte) => letters[byte % letters.length] ?? '')
  return Array.from({ length: fours }, (_, four) => drawn.slice(four * 4, four * 4 + 4).join('')).join('-')
}

/** A code as it is compared, however it was typed. */
export function plainCode(code: string): string {
  return code.toUpperCase().replaceAll(/[^A-Z0-9]/g, '')
}
