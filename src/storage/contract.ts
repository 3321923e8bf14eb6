import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import {
  type Acceptance,
  type CaseInList,
  type Change,
  type ChangeListener,
  type OwedInList,
  type Store,
  StoreError,
} from '#actions/store.ts'
import { hashBytes } from '#core/journal/canonical.ts'
import { firstBreak } from '#core/journal/chain.ts'
import { entryMaker, type MakeEntry } from '#core/journal/entries-for-tests.ts'
import type { Entry, StoredEntry } from '#core/journal/entry.ts'
import { asked, doubledNote, failingNote } from './projector-for-tests.ts'

/** One store under test: a place that can be opened any number of times while it is up. */
export type StoreUnderTest = {
  /** Opens the same place again; a store that has one connection by design gives that one. */
  readonly connect: () => Promise<Store>
  readonly stop: () => Promise<void>
}

const receivedAt = '2026-03-02T09:00:00.000Z'

/** What both stores promise. Every test works in a clinic of its own, so that no test sees another. */
export function storeContract(name: string, start: () => Promise<StoreUnderTest>): void {
  describe(name, () => {
    let place: StoreUnderTest
    let store: Store
    let clinics = 0

    beforeAll(async () => {
      place = await start()
      store = await place.connect()
    })
    afterAll(async () => {
      await store?.close()
      await place?.stop()
    })

    /** A new clinic and a maker of entries for it. */
    function clinic(): { name: string; make: MakeEntry } {
      clinics += 1
      const name = `clinic-${clinics}`
      return { name, make: entryMaker({ clinic: name }) }
    }

    const all = async (of: string, from = store) => {
      const entries: StoredEntry[] = []
      for await (const entry of from.entries(of)) entries.push(entry)
      return entries
    }
    const outcomes = (acceptances: readonly Acceptance[]) => acceptances.map(({ outcome }) => outcome)
    const projections = async (of: string, from = store) => ({ owed: await from.owed(of), cases: await from.cases(of) })

    /** Makes every list that a change of the house left behind; returns how many turns that took. */
    const remakeAll = async (of: string, from = store) => {
      let turns = 0
      for (; (await from.remakeNext(of)) !== null; turns += 1);
      return turns
    }

    it('gives back what it accepted, in order, and the chains verify', async () => {
      const { name, make } = clinic()
      const sent = [make(), make({ kind: 'weight' }), make({ stream: 'case:0002' }), make()]
      const acceptances = await store.accept(name, sent, receivedAt)
      expect(outcomes(acceptances)).toEqual(['accepted', 'accepted', 'accepted', 'accepted'])
      const stored = await all(name)
      expect(stored).toEqual(acceptances.map((one) => one.outcome === 'accepted' && one.stored))
      expect(stored.map(({ header, body }) => ({ ...header, body }))).toEqual(sent)
      expect(stored.map(({ envelope }) => [envelope.position, envelope.sequence])).toEqual([
        [1, 1],
        [2, 2],
        [3, 1],
        [4, 3],
      ])
      expect(firstBreak(stored)).toBeUndefined()
      expect(await store.stream(name, 'case:0001')).toEqual(
        stored.filter(({ header }) => header.stream === 'case:0001'),
      )
      expect(await store.entry(name, sent[1]?.id ?? '')).toEqual(stored[1])
      expect(await store.entry(name, 'no-such-entry')).toBeUndefined()
    })

    it('keeps text in one Unicode form, with every character the clinic may type', async () => {
      const { name, make } = clinic()
      const decomposed = 'A\u030angstro\u0308m \u{1F415} "quoted" \\ \u0000 \u2028 \'; drop table entries; --'
      const [first] = await store.accept(name, [make({ body: { text: decomposed } })], receivedAt)
      const [stored] = await all(name)
      expect(first).toMatchObject({ outcome: 'accepted', stored })
      expect(stored?.body).toEqual({ text: decomposed.normalize('NFC') })
      expect(firstBreak(await all(name))).toBeUndefined()
    })

    it('changes nothing when the same entries come twice, in one delivery or in two', async () => {
      const { name, make } = clinic()
      const entry = make()
      expect(outcomes(await store.accept(name, [entry, entry], receivedAt))).toEqual(['accepted', 'already'])
      const before = await all(name)
      const again = await store.accept(name, [entry], '2026-03-03T09:00:00.000Z')
      expect(again).toEqual([{ id: entry.id, outcome: 'already' }])
      expect(await all(name)).toEqual(before)
      expect(await store.keptAside(name)).toEqual([])
    })

    it('keeps the same id with other bytes aside, once, and leaves the entry as it was', async () => {
      const { name, make } = clinic()
      const entry = make()
      await store.accept(name, [entry], receivedAt)
      const other: Entry = { ...entry, body: { text: 'Something else.' } }
      const later = '2026-03-03T09:00:00.000Z'
      expect(await store.accept(name, [other], later)).toEqual([{ id: entry.id, outcome: 'kept-aside' }])
      await store.accept(name, [other], '2026-03-04T09:00:00.000Z')
      const kept = await store.keptAside(name)
      expect(kept.map(({ id, receivedAt }) => ({ id, receivedAt }))).toEqual([{ id: entry.id, receivedAt: later }])
      expect(JSON.parse(kept[0]?.text ?? '')).toEqual(other)
      expect((await all(name)).map(({ body }) => body)).toEqual([entry.body])
    })

    it('accepts an entry whose target has not arrived and refuses the one that would close a ring', async () => {
      const { name, make } = clinic()
      const reason = 'Read from the wrong line.'
      const [first, second, third] = [make(), make(), make()]
      const a = { ...first, supersedes: [second.id], reason }
      const b = { ...second, supersedes: [third.id], reason }
      const c = { ...third, withdraws: first.id, reason }
      expect(outcomes(await store.accept(name, [a], receivedAt))).toEqual(['accepted'])
      expect(outcomes(await store.accept(name, [b], receivedAt))).toEqual(['accepted'])
      expect(await store.accept(name, [c], receivedAt)).toMatchObject([
        { outcome: 'refused', refusal: { because: 'cycle', path: 'withdraws' } },
      ])
      expect(await all(name)).toHaveLength(2)
      expect(outcomes(await store.accept(name, [third], receivedAt))).toEqual(['accepted'])
    })

    it('refuses a ring inside one delivery, across streams, and an entry that supersedes itself', async () => {
      const { name, make } = clinic()
      const reason = 'Read from the wrong line.'
      const [first, second, third] = [make(), make({ stream: 'case:0002' }), make()]
      const a = { ...first, supersedes: [second.id], reason }
      const b = { ...second, supersedes: [first.id], reason }
      const self = { ...third, supersedes: [third.id], reason }
      expect(outcomes(await store.accept(name, [a, b, self], receivedAt))).toEqual(['accepted', 'refused', 'refused'])
    })

    it('writes down what is late already when it is accepted', async () => {
      const { name, make } = clinic()
      await store.accept(name, [make()], receivedAt, 'session-expired')
      expect((await all(name))[0]?.envelope.late).toBe('session-expired')
      expect(firstBreak(await all(name))).toBeUndefined()
    })

    it('gives gapless positions and sequences to four writers at once, and answers only what is there', async () => {
      const { name } = clinic()
      const connections = await Promise.all([1, 2, 3, 4].map(() => place.connect()))
      const shared = entryMaker({ clinic: name }, 9)()
      const answered = await Promise.all(
        connections.map(async (connection, writer) => {
          const make = entryMaker({ clinic: name }, writer + 1)
          const answers: Acceptance[] = []
          for (let round = 0; round < 25; round += 1) {
            const entries = [make({ stream: `case:000${round % 3}` }), make({ kind: 'weight' })]
            answers.push(...(await connection.accept(name, round === 7 ? [...entries, shared] : entries, receivedAt)))
          }
          return answers
        }),
      )
      const stored = await all(name)
      expect(stored).toHaveLength(201)
      expect(firstBreak(stored)).toBeUndefined()
      const accepted = answered.flat().filter(({ outcome }) => outcome === 'accepted')
      expect(accepted.map(({ id }) => id).sort()).toEqual(stored.map(({ header }) => header.id).sort())
      expect(answered.flat().filter(({ outcome }) => outcome === 'already')).toHaveLength(3)
      await Promise.all(connections.filter((other) => other !== store).map((other) => other.close()))
    })

    it('reads a journal of more than one page in order of position', async () => {
      const { name, make } = clinic()
      const sent = Array.from({ length: 1_203 }, () => make())
      await store.accept(name, sent, receivedAt)
      expect((await all(name)).map(({ header }) => header.id)).toEqual(sent.map(({ id }) => id))
    })

    it('writes the projection with the entries, and rebuilding gives the same rows', async () => {
      const { name, make } = clinic()
      const first = make({ body: { text: 'Left ear hurts.' } })
      await store.accept(name, [first, make({ kind: 'weight' }), make({ stream: 'case:0002' })], receivedAt)
      await store.accept(
        name,
        [make({ body: { text: 'Right ear hurts.' }, supersedes: [first.id], reason: 'Wrong side.' })],
        receivedAt,
      )
      const before = await projections(name)
      expect(before.owed.map(({ what }) => what).sort()).toEqual([
        'Owner will bring all ear drops to the appointment.',
        'Right ear hurts.',
      ])
      expect(before.cases.map(({ stream, chapter }) => [stream, chapter])).toEqual([
        ['case:0001', '12.4, 0 linked, 0 of the clinic, 0 closed days, 0 aside'],
        ['case:0002', 'not weighed, 0 linked, 0 of the clinic, 0 closed days, 0 aside'],
      ])
      expect(await store.rebuild(name)).toBe(2)
      expect(await projections(name)).toEqual(before)
    })

    it.each([
      ['fails', failingNote, 'projector at its end'],
      ['makes rows that cannot be written', doubledNote, 'made two rows'],
    ])(
      'keeps the entry when the projector %s, keeps the lists of before, and says that they are old',
      async (_, text, fault) => {
        const { name, make } = clinic()
        await store.accept(name, [make({ kind: 'weight' })], receivedAt)
        const before = await projections(name)
        const troubling = make({ body: { text } })
        const [acceptance] = await store.accept(name, [troubling, make({ stream: 'case:0002' })], receivedAt)
        expect(acceptance?.outcome).toBe('accepted')
        expect((await store.entry(name, troubling.id))?.body).toEqual({ text })
        const old = await projections(name)
        expect(old.cases).toEqual(expect.arrayContaining(before.cases))
        expect(old.cases.map(({ stream }) => stream)).toEqual(['case:0001', 'case:0002'])
        const said = old.owed.filter(({ id }) => id === 'unprojected')
        expect(said).toMatchObject([{ stream: 'case:0001', who: 'desk', dueBy: receivedAt }])
        expect(said[0]?.why).toContain(fault)
        await store.rebuild(name)
        expect(await projections(name)).toEqual(old)
        const gone = make({ kind: 'withdrawal', withdraws: troubling.id, reason: 'Not so.' })
        await store.accept(name, [{ ...gone, stream: 'case:0001' }], receivedAt)
        expect((await store.owed(name)).map(({ id }) => id)).not.toContain('unprojected')
        const after = await projections(name)
        await store.rebuild(name)
        expect(await projections(name)).toEqual(after)
      },
    )

    it('makes the clinic’s own rows anew from what came in any stream, also before its own first entry', async () => {
      const { name, make } = clinic()
      const what = async () => (await store.owed(name)).filter(({ id }) => id === 'everywhere').map((row) => row.what)
      await store.accept(name, [make({ kind: 'drug-wasted' })], receivedAt)
      expect(await what()).toEqual([])
      await store.accept(name, [make({ kind: 'register-line', stream: 'register:methadone' })], receivedAt)
      expect(await what()).toEqual(['1 lines, 2 entries'])
      await store.accept(name, [make({ kind: 'drug-wasted', stream: 'case:0002' })], receivedAt)
      expect(await what()).toEqual(['1 lines, 3 entries'])
      const before = await projections(name)
      await store.rebuild(name)
      expect(await projections(name)).toEqual(before)
    })

    it('projects every stream again when the clinic stream changes', async () => {
      const { name, make } = clinic()
      await store.accept(name, [make(), make({ stream: 'case:0002' })], receivedAt)
      await store.accept(name, [make({ stream: 'clinic', subject: { kind: 'clinic' } })], receivedAt)
      await remakeAll(name)
      const before = await projections(name)
      expect(before.cases.map(({ chapter }) => chapter)).toEqual(
        Array(2).fill('not weighed, 0 linked, 1 of the clinic, 0 closed days, 0 aside'),
      )
      await store.rebuild(name)
      expect(await projections(name)).toEqual(before)
    })

    it('leaves every other stream’s lists alone when the lists read nothing of what is new in the clinic stream', async () => {
      const { name, make } = clinic()
      const house = { stream: 'clinic', subject: { kind: 'clinic' } } as const
      await store.accept(name, [make(), make({ stream: 'case:0002' }), make(house)], receivedAt)
      const changed = async (entries: readonly Entry[]) => {
        const { version } = await store.lists(name, null)
        await store.accept(name, entries, receivedAt)
        await remakeAll(name)
        const before = await projections(name)
        const { changed } = await store.lists(name, version)
        await store.rebuild(name)
        expect(await projections(name)).toEqual(before)
        return changed
      }
      const shelf = make({ ...house, kind: 'shelf-item' })
      expect(await changed([shelf])).toEqual(['clinic'])
      expect(await changed([make({ ...house, kind: 'shelf-item' }), make()])).toEqual(['case:0001', 'clinic'])
      expect(await changed([make(house)])).toEqual(['case:0001', 'case:0002', 'clinic'])
      // An erasure reaches back: whatever it was, everything is read again.
      const erasure = make({ ...house, kind: 'erasure', body: { ...orderBody, entry: shelf.id } })
      expect(await changed([erasure])).toEqual(['case:0001', 'case:0002', 'clinic'])
    })

    it('projects every stream again when a closed day is added, and shows what was kept aside with its stream', async () => {
      const { name, make } = clinic()
      const first = make()
      await store.accept(name, [first, make({ stream: 'case:0002' })], receivedAt)
      const day = { day: '2026-12-25', because: 'Christmas Day' }
      await store.putRegister(name, { register: 'closed-day', id: day.day, body: day, by: 'p1', at: receivedAt })
      await store.accept(name, [{ ...first, body: { text: 'Other bytes.' } }], receivedAt)
      await remakeAll(name)
      const before = await projections(name)
      expect(before.cases.map(({ chapter }) => chapter.split(', ').slice(3))).toEqual([
        ['1 closed days', '1 aside'],
        ['1 closed days', '0 aside'],
      ])
      await store.rebuild(name)
      expect(await projections(name)).toEqual(before)
    })

    describe('after a change of the house that every list reads', () => {
      const house = { stream: 'clinic', subject: { kind: 'clinic' } } as const
      /** A clinic with so many cases, whose lists are as they should be. */
      const clinicOf = async (cases: number) => {
        const { name, make } = clinic()
        const entries = Array.from({ length: cases }, (_, at) => make({ stream: `case:${1_000 + at}` }))
        await store.accept(name, [make(house), ...entries], receivedAt)
        await remakeAll(name)
        return { name, make, change: (from = store) => from.accept(name, [make(house)], receivedAt) }
      }
      const remadeTo = async (name: string, from = store) => {
        const before = await projections(name, from)
        expect(await from.remaking(name)).toBeNull()
        await store.rebuild(name)
        expect(await projections(name)).toEqual(before)
        return new Set(before.cases.map(({ chapter }) => chapter.split(', ')[2]))
      }

      it('says that the lists are behind, and how far, and makes a few in each turn', async () => {
        const { name, change } = await clinicOf(50)
        const { version, remaking } = await store.lists(name, null)
        expect(remaking).toBeNull()
        const before = asked.times
        await change()
        // The entry itself costs its own stream only.
        expect(asked.times - before).toBe(1)
        expect((await store.lists(name, null)).remaking).toEqual({ made: 0, of: 50 })
        const first = await store.remakeNext(name)
        expect(first).toEqual((await store.lists(name, null)).remaking)
        expect(first?.made).toBeGreaterThan(0)
        expect(first?.made).toBeLessThanOrEqual(20)
        const chapters = (await store.cases(name)).map(({ chapter }) => chapter.split(', ')[2])
        expect(chapters.filter((one) => one === '2 of the clinic')).toHaveLength(first?.made ?? 0)
        await remakeAll(name)
        expect(await store.lists(name, version)).toMatchObject({ remaking: null, changed: { length: 51 } })
        expect(asked.times - before).toBe(51)
        expect(await remadeTo(name)).toEqual(new Set(['2 of the clinic']))
      })

      it('is the same for a closed day and for the clinic’s own row, and not for a contact', async () => {
        const { name } = await clinicOf(3)
        const put = async (register: 'contact' | 'clinic' | 'closed-day') => {
          await store.putRegister(name, { register, id: 'one', body: {}, by: 'p1', at: receivedAt })
          const behind = await store.remaking(name)
          await remakeAll(name)
          return behind
        }
        expect(await put('contact')).toBeNull()
        expect(await put('clinic')).toEqual({ made: 0, of: 3 })
        expect(await put('closed-day')).toEqual({ made: 0, of: 3 })
      })

      it('begins with those that waited longest when the house changes again meanwhile, and never ends on an old answer', async () => {
        const { name, make, change } = await clinicOf(50)
        await change()
        const first = await store.remakeNext(name)
        await change()
        // A case that is written to meanwhile is new at once; a contact's new name makes no list newer than it is.
        await store.accept(name, [make({ stream: 'case:1049' })], receivedAt)
        await store.putRegister(name, { register: 'contact', id: 'c1', body: {}, by: 'p1', at: receivedAt })
        expect(await store.remaking(name)).toEqual({ made: 1, of: 50 })
        for (let made = 1; made < 50 - (first?.made ?? 0); made = (await store.remakeNext(name))?.made ?? 50) {
          const chapters = (await store.cases(name)).map(({ chapter }) => chapter.split(', ')[2])
          expect(chapters.filter((one) => one === '2 of the clinic')).toHaveLength(first?.made ?? 0)
        }
        await remakeAll(name)
        expect(await remadeTo(name)).toEqual(new Set(['3 of the clinic']))
      })

      it('lets two processes share the work, while others write, and makes no list twice', async () => {
        const { name, change } = await clinicOf(120)
        const other = await place.connect()
        const before = asked.times
        await change(other)
        await Promise.all([remakeAll(name), remakeAll(name, other)])
        expect(asked.times - before).toBe(121)
        const writing = async () => {
          for (let round = 0; round < 6; round += 1) await change(round % 2 === 0 ? store : other)
        }
        await Promise.all([remakeAll(name), writing(), remakeAll(name, other)])
        await Promise.all([remakeAll(name), remakeAll(name, other)])
        expect(await remadeTo(name, other)).toEqual(new Set(['8 of the clinic']))
        if (other !== store) await other.close()
      })

      it('tells whoever watches about twenty times, however many there are', async () => {
        const { name, change } = await clinicOf(700)
        const heard: Change[] = []
        const stop = await store.watch({
          changed: (one) => one.clinic === name && heard.push(one),
          missed: () => undefined,
        })
        await change()
        const turns = await remakeAll(name)
        await expect.poll(() => heard.length).toBeGreaterThan(2)
        await new Promise((resolve) => setTimeout(resolve, 200))
        stop()
        expect(turns).toBeGreaterThan(30)
        expect(heard[0]?.streams).toEqual(['clinic'])
        const told = heard.slice(1)
        expect(new Set(told.flatMap(({ streams }) => streams))).toEqual(new Set(['lists']))
        expect(told.length).toBeLessThanOrEqual(22)
      })
    })

    it('projects linked files together while the merge lives, and apart again after it is withdrawn', async () => {
      const { name, make } = clinic()
      const chapters = async () => (await store.cases(name)).map(({ chapter }) => chapter.split(', ')[1])
      const merge = make({ kind: 'merge', body: { ...mergeBody, otherStream: 'case:0002' } })
      await store.accept(name, [make(), make({ stream: 'case:0002' }), make({ stream: 'case:0003' })], receivedAt)
      await store.accept(name, [merge], receivedAt)
      expect(await chapters()).toEqual(['1 linked', '2 linked', '0 linked'])
      await store.accept(name, [make({ stream: 'case:0002' })], receivedAt)
      expect(await chapters()).toEqual(['2 linked', '2 linked', '0 linked'])
      const linked = await projections(name)
      await store.rebuild(name)
      expect(await projections(name)).toEqual(linked)
      const unmerge = make({ kind: 'withdrawal', withdraws: merge.id, reason: 'Two dogs after all.' })
      await store.accept(name, [{ ...unmerge, stream: 'case:0001' }], receivedAt)
      expect(await chapters()).toEqual(['0 linked', '0 linked', '0 linked'])
    })

    it('refuses to take a merge back from the other file, where it would look undone and not be', async () => {
      const { name, make } = clinic()
      const merge = make({ kind: 'merge', body: { ...mergeBody, otherStream: 'case:0002' } })
      await store.accept(name, [merge, make({ stream: 'case:0002' })], receivedAt)
      const unmerge = make({ kind: 'withdrawal', withdraws: merge.id, reason: 'Two dogs after all.' })
      expect(await store.accept(name, [{ ...unmerge, stream: 'case:0002' }], receivedAt)).toMatchObject([
        { outcome: 'refused', refusal: { because: 'wrong-stream', path: 'stream' } },
      ])
      expect(outcomes(await store.accept(name, [{ ...unmerge, stream: 'case:0001' }], receivedAt))).toEqual([
        'accepted',
      ])
    })

    it('projects files that are merged in a ring once each', async () => {
      const { name, make } = clinic()
      const streams = ['case:0001', 'case:0002', 'case:0003']
      const ring = streams.map((stream, at) => {
        return make({ stream, kind: 'merge', body: { ...mergeBody, otherStream: streams[(at + 1) % 3] ?? '' } })
      })
      const self = make({ kind: 'merge', body: { ...mergeBody, otherStream: 'case:0001' } })
      await store.accept(name, [...ring, self], receivedAt)
      const before = await projections(name)
      expect(before.cases.map(({ chapter }) => chapter.split(', ')[1])).toEqual(['2 linked', '3 linked', '3 linked'])
      await store.rebuild(name)
      expect(await projections(name)).toEqual(before)
    })

    it('finds a ring over a chain of a thousand corrections that came newest first', async () => {
      const { name, make } = clinic()
      const plain = Array.from({ length: 1_000 }, () => make())
      const chain = plain.map((entry, at) => {
        const target = plain[(at + 1) % plain.length]?.id ?? ''
        return { ...entry, supersedes: [target], reason: 'Corrected.' }
      })
      const last = chain.pop()
      if (!last) throw new Error('no last entry')
      expect(new Set(outcomes(await store.accept(name, chain, receivedAt)))).toEqual(new Set(['accepted']))
      expect(outcomes(await store.accept(name, [last], receivedAt))).toEqual(['refused'])
    })

    it('erases the body an order names, everywhere, and the chain still verifies', async () => {
      const { name, make } = clinic()
      const entry = make({ body: { text: 'Something private.' } })
      await store.accept(name, [entry, make()], receivedAt)
      await store.accept(name, [{ ...entry, body: { text: 'Private too.' } }], receivedAt)
      const order = make({ kind: 'erasure', body: { ...orderBody, entry: entry.id } })
      await store.accept(name, [order], '2026-03-05T09:00:00.000Z')
      const stored = await store.entry(name, entry.id)
      expect(stored?.body).toBeNull()
      expect(stored?.erased).toEqual({ on: '2026-03-05T09:00:00.000Z', by: 'person-manager' })
      expect(firstBreak(await all(name))).toBeUndefined()
      expect(await store.keptAside(name)).toEqual([])
      expect((await store.owed(name)).map(({ what }) => what)).not.toContain('Something private.')
      expect(outcomes(await store.accept(name, [entry], receivedAt))).toEqual(['already'])
      await store.accept(name, [{ ...entry, body: { text: 'Private too.' } }], receivedAt)
      expect(JSON.stringify(await store.keptAside(name))).not.toContain('Private too.')
    })

    it('takes the picture of an erased entry with it, and does not take it in again', async () => {
      const { name, make } = clinic()
      const [alone, shared] = [Uint8Array.of(1, 2, 3), Uint8Array.of(4, 5, 6)]
      const named = (bytes: Uint8Array) => {
        return { hash: hashBytes(bytes), mediaType: 'image/png', bytes: bytes.length, name: 'ear.png' }
      }
      const entry = make({ attachments: [named(alone), named(shared)] })
      await store.accept(name, [entry, make({ attachments: [named(shared)] })], receivedAt)
      for (const bytes of [alone, shared]) await store.putFile(name, hashBytes(bytes), 'image/png', bytes)
      await store.accept(name, [make({ kind: 'erasure', body: { ...orderBody, entry: entry.id } })], receivedAt)
      expect(await store.fileHashes(name)).toEqual([hashBytes(shared)])
      for (const bytes of [alone, shared]) await store.putFile(name, hashBytes(bytes), 'image/png', bytes)
      expect(await store.fileHashes(name)).toEqual([hashBytes(shared)])
    })

    it('erases also when whoever ordered it is written with a character that not every database holds', async () => {
      const { name, make } = clinic()
      const entry = make({ body: { text: 'Something private.' } })
      const order = make({ kind: 'erasure', body: { ...orderBody, entry: entry.id, orderedBy: 'manager\u0000' } })
      await store.accept(name, [entry, order], receivedAt)
      expect((await store.entry(name, entry.id))?.erased?.by).toBe('manager\uFFFD')
    })

    it('erases on arrival what was ordered erased before it came, and never an order', async () => {
      const { name, make } = clinic()
      const entry = make({ body: { text: 'Something private.' } })
      const order = make({ kind: 'erasure', body: { ...orderBody, entry: entry.id } })
      await store.accept(name, [order], receivedAt)
      const [arrived] = await store.accept(name, [entry], receivedAt)
      expect(arrived).toMatchObject({ outcome: 'accepted', stored: { body: null, erased: { by: 'person-manager' } } })
      expect(firstBreak(await all(name))).toBeUndefined()
      const second = make({ kind: 'erasure', body: { ...orderBody, entry: order.id } })
      expect(await store.accept(name, [second], receivedAt)).toMatchObject([
        { outcome: 'refused', refusal: { path: 'body.entry' } },
      ])
    })

    it('restores into an empty clinic exactly what another store had', async () => {
      const { name, make } = clinic()
      const first = make()
      const weight = make({ kind: 'weight' })
      await store.accept(name, [first, weight, make({ stream: 'case:0002' })], receivedAt)
      await store.accept(name, [{ ...weight, stream: 'case:0003' }], receivedAt)
      await store.accept(name, [make({ kind: 'erasure', body: { ...orderBody, entry: first.id } })], receivedAt)
      await store.putRegister(name, { register: 'person', id: 'p1', body: { name: 'Ada' }, by: 'p1', at: receivedAt })
      const before = await all(name)
      const rows = await store.registers(name)
      const kept = await store.keptAside(name)
      expect(kept).toHaveLength(1)
      const elsewhere = await start()
      const empty = await elsewhere.connect()
      try {
        await empty.restore(name, from(before), rows, kept)
        expect(await all(name, empty)).toEqual(before)
        expect(await empty.keptAside(name)).toEqual(kept)
        expect(await empty.registers(name)).toEqual(rows)
        expect(await empty.remaking(name)).toBeNull()
        await remakeAll(name)
        expect(await projections(name, empty)).toEqual(await projections(name))
        const next = make()
        await empty.accept(name, [next], receivedAt)
        expect((await empty.entry(name, next.id))?.envelope.position).toBe(before.length + 1)
        expect(firstBreak(await all(name, empty))).toBeUndefined()
        await expect(empty.restore(name, from(before), rows)).rejects.toMatchObject({ code: 'not-empty' })
      } finally {
        await empty.close()
        await elsewhere.stop()
      }
    })

    it('restores nothing at all when one entry of the journal was changed', async () => {
      const { name, make } = clinic()
      const other = clinic().name
      await store.accept(name, [make(), make(), make()], receivedAt)
      const changed = (await all(name)).map((stored, at) =>
        at === 2 ? { ...stored, body: { text: 'Edited.' } } : stored,
      )
      const elsewhere = await start()
      const empty = await elsewhere.connect()
      try {
        const sentence = `entry ${changed[2]?.header.id} at position 3`
        await expect(empty.restore(name, from(changed), [])).rejects.toThrow(sentence)
        await expect(empty.restore(other, from(await all(name)), [])).rejects.toThrow('belongs to clinic')
        expect(await all(name, empty)).toEqual([])
        expect(await empty.cases(name)).toEqual([])
        expect(await empty.clinics()).toEqual([])
      } finally {
        await empty.close()
        await elsewhere.stop()
      }
    })

    it('applies the erase list again after an older backup was restored', async () => {
      const { name, make } = clinic()
      const entry = make({ body: { text: 'Something private.' } })
      await store.accept(name, [entry, make()], receivedAt)
      const backup = await all(name)
      await store.accept(name, [make({ kind: 'erasure', body: { ...orderBody, entry: entry.id } })], receivedAt)
      const list = await store.erasures(name)
      const elsewhere = await start()
      const older = await elsewhere.connect()
      try {
        await older.restore(name, from(backup), [])
        expect((await older.entry(name, entry.id))?.body).toEqual(entry.body)
        expect(await older.applyErasures(name, list, receivedAt)).toEqual([entry.id])
        expect((await older.entry(name, entry.id))?.body).toBeNull()
        expect(await older.applyErasures(name, list, receivedAt)).toEqual([])
        expect(firstBreak(await all(name, older))).toBeUndefined()
      } finally {
        await older.close()
        await elsewhere.stop()
      }
    })

    it('appends a revision to a register row and erases all of them when the row is erased', async () => {
      const { name } = clinic()
      const row = { register: 'contact', id: 'c1', by: 'person-desk', at: receivedAt } as const
      await store.putRegister(name, { ...row, body: { phone: '0100' } })
      const second = await store.putRegister(name, { ...row, body: { phone: '0200' } })
      expect(second.revision).toBe(2)
      expect((await store.registers(name)).map(({ revision, body }) => [revision, body])).toEqual([
        [1, { phone: '0100' }],
        [2, { phone: '0200' }],
      ])
      await store.putRegister(name, { ...row, body: null })
      expect((await store.registers(name)).map(({ revision, body }) => [revision, body])).toEqual([
        [1, null],
        [2, null],
        [3, null],
      ])
    })

    it('keeps files under their hash and refuses bytes that are not what the name says', async () => {
      const { name } = clinic()
      const bytes = Uint8Array.from({ length: 300_000 }, (_, at) => (at * 31) % 256)
      const hash = hashBytes(bytes)
      await store.putFile(name, hash, 'image/jpeg', bytes)
      await store.putFile(name, hash, 'image/jpeg', bytes)
      expect(await store.file(name, hash)).toEqual({ mediaType: 'image/jpeg', bytes })
      expect(await store.fileHashes(name)).toEqual([hash])
      await expect(store.putFile(name, hash, 'image/jpeg', bytes.subarray(1))).rejects.toBeInstanceOf(StoreError)
      expect(await store.file(name, '0'.repeat(64))).toBeUndefined()
    })

    it('tells whoever watches, on any connection, what a write changed, and nothing of one that changed nothing', async () => {
      const { name, make } = clinic()
      const other = await place.connect()
      const heard: Change[] = []
      const listener: ChangeListener = {
        changed: (change) => change.clinic === name && heard.push(change),
        missed: () => undefined,
      }
      const stop = await other.watch(listener)
      const entry = make()
      await store.accept(name, [entry, make({ stream: 'case:0002' })], receivedAt)
      await store.accept(name, [entry], receivedAt)
      await store.putRegister(name, { register: 'contact', id: 'c1', body: {}, by: 'p1', at: receivedAt })
      await expect(store.accept(name, [make({ clinic: 'elsewhere' })], receivedAt)).rejects.toThrow('belongs to')
      const many = Array.from({ length: 30 }, (_, at) => make({ stream: `case:${'x'.repeat(150)}${at}` }))
      await store.accept(name, many, receivedAt)
      await expect.poll(() => heard.flatMap(({ streams }) => streams).length, { timeout: 30_000 }).toBe(33)
      expect(heard.slice(0, 2)).toEqual([
        { clinic: name, position: 2, streams: ['case:0001', 'case:0002'] },
        { clinic: name, position: 2, streams: ['register:contact'] },
      ])
      expect(heard.at(-1)?.position).toBe(32)
      stop()
      await store.accept(name, [make()], receivedAt)
      await new Promise((resolve) => setTimeout(resolve, 100))
      expect(heard.flatMap(({ streams }) => streams)).toHaveLength(33)
      if (other !== store) await other.close()
    })

    it('gives the lists whole, or only the rows of the streams that changed since a version', async () => {
      const { name, make } = clinic()
      const owner = { register: 'contact', id: 'c1', by: 'person-desk', at: receivedAt } as const
      const lists = async (since: number | null) => {
        const { owed, cases, ...rest } = await store.lists(name, since)
        const read = (text: string) => JSON.parse(`[${text}]`) as { stream: string }[]
        const ordered = (text: string) => read(text).sort((a, b) => (a.stream < b.stream ? -1 : 1))
        return { ...rest, owed: ordered(owed) as OwedInList[], cases: ordered(cases) as CaseInList[] }
      }
      expect(await lists(null)).toEqual({ version: 0, remaking: null, changed: null, owed: [], cases: [] })
      await store.accept(name, [make(), make({ stream: 'case:0002' })], receivedAt)
      const first = await lists(null)
      const bramble = { name: 'Bramble', species: 'dog' }
      expect(first.owed).toEqual((await store.owed(name)).map((row) => ({ ...row, ...bramble })))
      const unnamed = { ownerName: null, ownerPhone: null }
      expect(first.cases).toEqual(
        (await store.cases(name)).map(({ household, ...row }) => ({ ...row, householdId: household, ...unnamed })),
      )
      expect(await lists(first.version)).toEqual({ ...first, changed: [], owed: [], cases: [] })
      await store.accept(name, [make({ stream: 'case:0002', kind: 'weight' })], receivedAt)
      const second = await lists(first.version)
      expect(second.changed).toEqual(['case:0002'])
      expect(second.owed.map(({ stream }) => stream)).toEqual(['case:0002'])
      expect(second.cases.map(({ stream, chapter }) => [stream, chapter.split(',')[0]])).toEqual([
        ['case:0002', '12.4'],
      ])
      // A name of the owner is corrected: it stands beside every case of theirs.
      await store.putRegister(name, { ...owner, body: { name: 'Ada Adler', phone: '0100' } })
      await store.putRegister(name, { ...owner, body: { name: 'Ada Alder', phone: null } })
      const third = await lists(second.version)
      expect(third.changed).toEqual(['case:0001', 'case:0002'])
      expect(third.cases.map(({ ownerName, ownerPhone }) => [ownerName, ownerPhone])).toEqual(
        Array(2).fill(['Ada Alder', null]),
      )
      expect((await lists(null)).cases).toEqual(third.cases)
      await store.putRegister(name, { ...owner, body: null })
      expect((await lists(null)).cases).toMatchObject([unnamed, unnamed])
      await store.rebuild(name)
      const { version, ...rebuilt } = await lists(null)
      expect(rebuilt).toMatchObject({ owed: first.owed, cases: [unnamed, unnamed] })
      // A version that was handed out before an older backup was restored means nothing here.
      expect(await lists(version + 1)).toEqual(await lists(null))
    })

    it('gives what is new in a stream and in those joined to it, and what was kept aside of them', async () => {
      const { name, make } = clinic()
      const merge = make({ kind: 'merge', body: { ...mergeBody, otherStream: 'case:0002' } })
      const sent = [make(), make({ stream: 'case:0002' }), make({ stream: 'case:0003' }), merge]
      await store.accept(name, sent, receivedAt)
      expect(await store.joined(name, 'case:0002')).toEqual(['case:0001', 'case:0002'])
      expect(await store.joined(name, 'case:0003')).toEqual(['case:0003'])
      const positions = async (streams: string[], after: number) =>
        (await store.after(name, streams, after)).map(({ envelope }) => envelope.position)
      expect(await positions(['case:0001', 'case:0002'], 0)).toEqual([1, 2, 4])
      expect(await positions(['case:0001', 'case:0002'], 2)).toEqual([4])
      expect(await positions(['case:0003'], 3)).toEqual([])
      expect(await positions([], 0)).toEqual([])
      const ofKinds = async (...kinds: string[]) =>
        (await store.ofKinds(name, kinds)).map(({ envelope }) => envelope.position)
      expect(await ofKinds('merge')).toEqual([4])
      expect(await ofKinds('merge', sent[0]?.kind ?? '')).toEqual([1, 2, 3, 4])
      expect(await ofKinds()).toEqual([])
      const aside = { ...(sent[2] as Entry), body: { text: 'Other bytes.' } }
      await store.accept(name, [aside], receivedAt)
      expect(await store.keptAsideOf(name, ['case:0001', 'case:0002'])).toEqual([])
      expect(await store.keptAsideOf(name, ['case:0003'])).toEqual(await store.keptAside(name))
      expect(await store.keptAsideOf(name, [])).toEqual([])
    })

    it('never shows one clinic anything of another', async () => {
      const [one, two] = [clinic(), clinic()]
      const bytes = Uint8Array.of(1, 2, 3)
      const entry = one.make()
      await store.accept(one.name, [entry], receivedAt)
      await store.accept(one.name, [{ ...entry, body: { text: 'Other.' } }], receivedAt)
      await store.putRegister(one.name, { register: 'person', id: 'p1', body: {}, by: 'p1', at: receivedAt })
      await store.putFile(one.name, hashBytes(bytes), 'image/png', bytes)
      const seen = [
        await all(two.name),
        await store.stream(two.name, entry.stream),
        await store.keptAside(two.name),
        await store.registers(two.name),
        await store.fileHashes(two.name),
        await store.owed(two.name),
        await store.cases(two.name),
        await store.erasures(two.name),
      ]
      expect(seen.flat()).toEqual([])
      expect(await store.entry(two.name, entry.id)).toBeUndefined()
      expect(await store.file(two.name, hashBytes(bytes))).toBeUndefined()
      // The same id may stand in both: each clinic has its own journal.
      expect(outcomes(await store.accept(two.name, [{ ...entry, clinic: two.name }], receivedAt))).toEqual(['accepted'])
      await expect(store.accept(two.name, [entry], receivedAt)).rejects.toThrow('belongs to clinic')
      expect(await store.clinics()).toEqual(expect.arrayContaining([one.name, two.name]))
    })

    it('keeps several other texts under one id, and a body of null, and restores both', async () => {
      const { name, make } = clinic()
      const entry = make()
      const empty = { ...make(), kind: 'from-tomorrow', body: null }
      await store.accept(name, [entry, empty], receivedAt)
      for (const text of ['a', 'b', 'c']) await store.accept(name, [{ ...entry, body: { text } }], receivedAt)
      const [before, kept] = [await all(name), await store.keptAside(name)]
      expect(kept).toHaveLength(3)
      expect(firstBreak(before)).toBeUndefined()
      const elsewhere = await start()
      const other = await elsewhere.connect()
      try {
        await other.restore(name, from(before), [], kept)
        expect(await all(name, other)).toEqual(before)
        expect(await other.keptAside(name)).toEqual(kept)
      } finally {
        await other.close()
        await elsewhere.stop()
      }
    })

    it('keeps nothing of a delivery when one of its parts fails', async () => {
      const { name, make } = clinic()
      await store.accept(name, [make()], receivedAt)
      const before = [await all(name), await projections(name)]
      const half = [make(), { ...make(), clinic: 'clinic-elsewhere' }]
      await expect(store.accept(name, half, receivedAt)).rejects.toThrow('belongs to clinic')
      expect([await all(name), await projections(name)]).toEqual(before)
      expect(outcomes(await store.accept(name, half.slice(0, 1), receivedAt))).toEqual(['accepted'])
    })
  })
}

const orderBody = { because: 'The owner asked for it.', orderedBy: 'person-manager' }
const mergeBody = { otherAnimal: 'animal-2', matchedOn: ['chip' as const], secondPerson: 'person-nurse' }

async function* from<Item>(items: readonly Item[]): AsyncGenerator<Item> {
  yield* items
}
