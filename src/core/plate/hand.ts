import type { StructureId } from './scene.ts'

/** A pen leaves a line; the marker a broad one that what lies under it shows through. */
export const drawnTools = ['pen', 'marker'] as const
export type DrawnTool = (typeof drawnTools)[number]
export const signs = ['ring', 'arrow'] as const
export type Sign = (typeof signs)[number]

/** More than anybody draws in front of an owner; an entry stays small enough to send over a poor line. */
export const mostStrokes = 400
export const mostPoints = 600

/** One movement of the hand. Whole numbers in tenths of a unit of the plate: points as x, y, x, y … */
export type Stroke = { readonly tool: DrawnTool; readonly width: number; readonly points: readonly number[] }
/** A part of the ear that somebody marked without drawing. */
export type Mark = { readonly structure: StructureId; readonly sign: Sign }
/** All that was drawn by hand on one plate. */
export type Hand = { readonly strokes: readonly Stroke[]; readonly marks: readonly Mark[] }

export const emptyHand: Hand = { strokes: [], marks: [] }

/** Widths in tenths of a unit: a pen line is broader than any printed one, the marker as the canal is wide. */
export const toolWidths: Readonly<Record<DrawnTool, number>> = { pen: 75, marker: 240 }
