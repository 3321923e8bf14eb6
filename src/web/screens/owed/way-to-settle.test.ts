import { describe, expect, it } from 'vitest'
import { wayToSettle } from './way-to-settle.ts'

describe('the one step from an owed thing to what settles it', () => {
  it('is the form of the entry, with the owed thing named', () => {
    const way = wayToSettle({ stream: 'case:tansy', id: 'suture-check:operation-tansy' }, 'nurse')
    expect(way).toEqual({ href: '/case/tansy/write/check?owed=suture-check%3Aoperation-tansy', how: 'write' })
  })

  it('is the page of the conflict, and the filing form of a paper', () => {
    const conflict = wayToSettle({ stream: 'case:barley', id: 'conflict-to-settle:entry-1+entry-2' }, 'nurse')
    expect(conflict).toEqual({ href: '/case/barley/conflict/entry-1', how: 'conflict' })
    const paper = wayToSettle({ stream: 'tray', id: 'arrived-paper:entry-9' }, 'desk')
    expect(paper).toEqual({ href: '/tray?file=entry-9', how: 'file' })
  })

  it('is the screen beside the table for a sign-out and for an emergency that the owner has to hear of', () => {
    const way = wayToSettle({ stream: 'case:tansy', id: 'sign-out:operation-tansy' }, 'nurse')
    expect(way?.href).toBe('/case/tansy/room/operation-tansy/pause/before-leaving?at=end')
    const told = wayToSettle({ stream: 'case:tansy', id: 'owner-about-emergency:operation-tansy' }, 'desk')
    expect(told?.href).toBe('/case/tansy/room/operation-tansy/told')
    expect(wayToSettle({ stream: 'case:tansy', id: 'sign-out:operation-tansy' }, 'desk')).toBeNull()
  })

  it('is the round of the animal for what its pain asks for', () => {
    const href = (id: string) => wayToSettle({ stream: 'case:hazel', id }, 'nurse')?.href
    expect(href('pain-to-treat:entry-1')).toBe('/case/hazel/ward#chain')
    expect(href('pain-again:entry-1')).toBe('/case/hazel/ward#pain')
    expect(href('first-call:entry-1')).toBe('/case/hazel/write/call?owed=first-call%3Aentry-1')
  })

  it('is the page of the register, whatever its name holds', () => {
    const way = wayToSettle(
      { stream: 'clinic', id: 'register-second-name:register:methadone|10 mg/mL|injection' },
      'nurse',
    )
    const href = `/settings/register/of/${encodeURIComponent('register:methadone|10 mg/mL|injection')}`
    expect(way).toEqual({ href, how: 'register' })
  })

  it('is none where nothing is written, where the house decides, or where this role may not write it', () => {
    expect(wayToSettle({ stream: 'case:tansy', id: 'last-meal:operation-tansy' }, 'nurse')).toBeNull()
    expect(wayToSettle({ stream: 'case:tansy', id: 'policy-unreadable:x' }, 'manager')).toBeNull()
    expect(
      wayToSettle({ stream: 'case:tansy', id: 'consent-before-operation:operation-tansy' }, 'read-only'),
    ).toBeNull()
  })
})
