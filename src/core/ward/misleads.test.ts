import { describe, expect, it } from 'vitest'
import { painScales } from '#content/scores/pain-scales.ts'
import { type Doubt, misleading } from './misleads.ts'

const noBlink: Doubt = { because: 'blink-absent', side: 'LEFT' }
const bandage: Doubt = { because: 'bandage', side: null }
const tilt: Doubt = { because: 'head-tilt', side: null }

describe('what of a pain scale misleads', () => {
  it('is the face on a side that does not blink, with the side (Evangelista 2019 looks at faces)', () => {
    expect(misleading('grimace-cat', [noBlink], painScales)).toEqual([
      { items: ['ears', 'lids', 'muzzle', 'whiskers'], because: [noBlink] },
    ])
  })

  it('is nothing of a scale that looks at no face, however weak the face is', () => {
    expect(misleading('glasgow-dog-short', [noBlink], painScales)).toEqual([])
    expect(misleading('house-0-10', [noBlink, bandage, tilt], painScales)).toEqual([])
  })

  it('is the touch through a bandage, and the walk of a dizzy animal only where the scale has it walk', () => {
    expect(misleading('glasgow-dog-short', [bandage, tilt], painScales)).toEqual([
      { items: ['walk'], because: [tilt] },
      { items: ['touch'], because: [bandage] },
    ])
    expect(misleading('glasgow-dog-short-not-walked', [tilt], painScales)).toEqual([])
  })

  it('is nothing where nothing on record speaks against it', () => {
    expect(misleading('grimace-cat', [], painScales)).toEqual([])
  })
})
