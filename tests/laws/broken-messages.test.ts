import { describe, expect, it } from 'vitest'
import { breakMessages } from './broken-messages.ts'

describe('a result message that was spoilt on its way', () => {
  it('is read whole or refused whole, never thrown at; npm test spoils a hundred thousand', () => {
    expect(breakMessages(1500, 20_261_130)).toBeUndefined()
  })
})
