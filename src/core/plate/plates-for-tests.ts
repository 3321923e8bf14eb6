import { layers, type PlateParameters } from './parameters.ts'

/** An ear about which everything is known and nothing was found. */
export const wellEar: PlateParameters = {
  species: 'dog',
  side: 'RIGHT',
  view: 'transverse',
  carriage: 'erect',
  narrowing: { vertical: 'none', horizontal: 'none', recorded: 'by-part' },
  mineral: 'no',
  drum: 'intact',
  bullaContent: 'air',
  bullaWall: 'normal',
  mass: { kind: 'none' },
  surgery: { kind: 'none' },
  layers,
}

/** An ear nobody has looked at. */
export const unknownEar: PlateParameters = {
  ...wellEar,
  carriage: 'not-recorded',
  narrowing: { vertical: 'not-assessed', horizontal: 'not-assessed', recorded: 'whole' },
  mineral: 'not-assessed',
  drum: 'not-assessed',
  bullaContent: 'not-assessed',
  bullaWall: 'not-assessed',
  mass: { kind: 'not-assessed' },
}
