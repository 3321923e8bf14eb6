import type { FillRole, StrokeRole } from './scene.ts'

/** `forced`: the person chose the colours of the whole machine; only they are used, and no wash. */
export const themes = ['light', 'dark', 'print', 'forced'] as const
export type Theme = (typeof themes)[number]

type Inks = {
  readonly ink: string
  readonly quiet: string
  readonly accent: string
  readonly paper: string
  readonly tissue: string
  readonly muscle: string
  readonly gland: string
  readonly cartilage: string
  readonly bone: string
  readonly lining: string
  readonly air: string
  readonly brain: string
  /** Pale fillings of the tubes that a surgeon looks for: nerve, vein; and the line of an artery. */
  readonly nerve: string
  readonly vein: string
  readonly artery: string
  /** What a person drew, in the violet of a skin marker. */
  readonly hand: string
}

/** One accent for what was found and what is done; all anatomy is ink and pale washes of it. */
export const inks: Readonly<Record<Theme, Inks>> = {
  light: {
    ink: '#1c2326',
    quiet: '#5a666b',
    accent: '#1f5a66',
    paper: '#ffffff',
    tissue: '#f6f3ee',
    muscle: '#efe6de',
    gland: '#eeebdf',
    cartilage: '#dfe6e7',
    bone: '#ece6d6',
    lining: '#f0dcd2',
    air: '#ffffff',
    brain: '#f3eff0',
    nerve: '#f3dc86',
    vein: '#bcd2e4',
    artery: '#8e2b33',
    hand: '#5d2a8c',
  },
  dark: {
    ink: '#e8ecec',
    quiet: '#a3afb3',
    accent: '#7fc4d1',
    paper: '#12181a',
    tissue: '#1c2426',
    muscle: '#2a2927',
    gland: '#2a2b25',
    cartilage: '#34454a',
    bone: '#45433a',
    lining: '#4a3a36',
    air: '#12181a',
    brain: '#252529',
    nerve: '#8d7a2c',
    vein: '#3d566c',
    artery: '#d98f8c',
    hand: '#cdaaf6',
  },
  print: {
    ink: '#000000',
    quiet: '#444444',
    accent: '#000000',
    paper: '#ffffff',
    tissue: '#ffffff',
    muscle: '#f3f3f3',
    gland: '#f7f7f7',
    cartilage: '#e2e2e2',
    bone: '#ececec',
    lining: '#f4f4f4',
    air: '#ffffff',
    brain: '#fafafa',
    nerve: '#ffffff',
    vein: '#d4d4d4',
    artery: '#000000',
    hand: '#4b1d7a',
  },
  forced: {
    ink: 'CanvasText',
    quiet: 'CanvasText',
    accent: 'CanvasText',
    paper: 'Canvas',
    tissue: 'Canvas',
    muscle: 'Canvas',
    gland: 'Canvas',
    cartilage: 'Canvas',
    bone: 'Canvas',
    lining: 'Canvas',
    air: 'Canvas',
    brain: 'Canvas',
    nerve: 'Canvas',
    vein: 'Canvas',
    artery: 'CanvasText',
    hand: 'CanvasText',
  },
}

export type InkLine = {
  readonly colour: 'ink' | 'quiet' | 'accent' | 'paper' | 'artery'
  readonly width: number
  readonly dash?: readonly number[]
  /** A lighter line inside makes a tube of it. */
  readonly core?: number
  readonly inside?: 'bone' | 'nerve' | 'vein'
}

/** Weight, dash and tube say what a line is; the colour only repeats it. */
export const lines: Readonly<Record<StrokeRole, InkLine>> = {
  outline: { colour: 'ink', width: 1.7 },
  bone: { colour: 'ink', width: 2.1 },
  fine: { colour: 'ink', width: 0.8 },
  faint: { colour: 'quiet', width: 0.7 },
  /** Fibres, lobules, folds: seen as a texture, never as a line. */
  texture: { colour: 'quiet', width: 0.45 },
  context: { colour: 'quiet', width: 0.9 },
  midline: { colour: 'quiet', width: 0.8, dash: [14, 4, 1, 4] },
  drum: { colour: 'ink', width: 3 },
  ossicle: { colour: 'ink', width: 4.6, core: 2.6, inside: 'bone' },
  nerve: { colour: 'ink', width: 4.4, core: 2.8, inside: 'nerve' },
  'nerve-behind': { colour: 'ink', width: 2.6, dash: [0.1, 4.6] },
  vein: { colour: 'ink', width: 7.2, core: 5.6, inside: 'vein' },
  artery: { colour: 'artery', width: 2.6 },
  'artery-behind': { colour: 'artery', width: 2, dash: [0.1, 4] },
  unknown: { colour: 'ink', width: 1.4, dash: [6, 4.5] },
  question: { colour: 'ink', width: 2.4 },
  removed: { colour: 'quiet', width: 1, dash: [2, 4] },
  finding: { colour: 'accent', width: 2.3 },
  cut: { colour: 'accent', width: 3.6, dash: [11, 5] },
  planned: { colour: 'accent', width: 1.3, dash: [3, 3] },
  scar: { colour: 'accent', width: 1.6 },
}

export type Hatch = 'filled' | 'mineral' | 'mass' | 'opened' | 'leave-alone' | 'unknown'
export const hatches: readonly Hatch[] = ['filled', 'mineral', 'mass', 'opened', 'leave-alone', 'unknown']

/** Fills that are a wash; the others are hatched. */
export const washes: Readonly<Record<Exclude<FillRole, Hatch>, keyof Inks>> = {
  paper: 'paper',
  tissue: 'tissue',
  muscle: 'muscle',
  gland: 'gland',
  cartilage: 'cartilage',
  bone: 'bone',
  brain: 'brain',
  lining: 'lining',
  air: 'air',
}
