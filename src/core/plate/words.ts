import type { Side, Species } from '../animal/species.ts'
import type {
  BullaContent,
  BullaWall,
  Carriage,
  DrumState,
  Incision,
  Layer,
  MassPlace,
  MassSize,
  Narrowing,
  Opening,
  Removal,
  View,
  YesNoUnknown,
} from './parameters.ts'
import type { FillRole, StrokeRole, StructureId } from './scene.ts'

export type KeySample = Extract<
  StrokeRole | FillRole,
  'nerve-behind' | 'unknown' | 'removed' | 'filled' | 'mineral' | 'leave-alone' | 'planned' | 'opened' | 'mass'
>

/** Every word on the plate and in its description. `{places}` are filled; language files can be added. */
export type PlateWords = {
  readonly language: string
  readonly sides: Readonly<Record<Side, string>>
  readonly species: Readonly<Record<Species, string>>
  readonly views: Readonly<Record<View, string>>
  /** Holds {side}. */
  readonly title: string
  /** Holds {species} and {view}. */
  readonly subtitle: string
  readonly towards: Readonly<Record<'outside' | 'midline' | 'nose' | 'tail', string>>
  readonly structures: Readonly<Record<StructureId, string>>
  /** What parts the bulla: a low ridge in the dog, a septum in the cat. */
  readonly septum: Readonly<Record<'one' | 'two', string>>
  readonly narrowing: Readonly<Record<Narrowing, string>>
  readonly mineral: Readonly<Record<YesNoUnknown, string>>
  readonly drum: Readonly<Record<DrumState, string>>
  readonly bullaContent: Readonly<Record<BullaContent, string>>
  readonly bullaWall: Readonly<Record<BullaWall, string>>
  readonly carriage: Readonly<Record<Carriage, string>>
  /** Holds {place} and {size}. */
  readonly massPlaced: string
  readonly massPlaces: Readonly<Record<MassPlace, string>>
  readonly massSizes: Readonly<Record<MassSize, string>>
  readonly incision: Readonly<Record<Incision, string>>
  readonly removal: Readonly<Record<Removal, string>>
  readonly opening: Readonly<Record<Opening, string>>
  readonly surgery: Readonly<Record<'planned' | 'done', string>>
  readonly key: Readonly<Record<KeySample, string>>
  readonly notes: {
    readonly transverse: string
    readonly lateral: string
    readonly flap: string
    readonly wholeCanal: string
    readonly massNotAssessed: string
    readonly massPlaceNotRecorded: string
    readonly incisionNotRecorded: string
    readonly removalNotRecorded: string
    readonly openingNotRecorded: string
    readonly operationNotDrawn: string
    readonly mineralNotProof: string
  }
  readonly scale: Readonly<Record<Species, string>>
  /** Of structures towards the nose and towards the tail of the section. */
  readonly heldUp: string
  readonly before: string
  readonly behind: string
  /** What was drawn by hand; `lines` holds {count}, `marked` holds {list}. */
  readonly hand: { readonly line: string; readonly lines: string; readonly marked: string }
  readonly described: {
    /** Hold {side}, {species}, {view}. */
    readonly opening: string
    readonly relations: Readonly<Record<View, Readonly<Record<Species, string>>>>
    readonly layers: Readonly<Record<Layer, string>>
    /** Holds {list}. */
    readonly notDrawn: string
    /** Holds {list}. */
    readonly named: string
    readonly found: string
    readonly surgery: string
    /** Instead of the relations, once the canal is gone. */
    readonly afterwards: string
  }
}
