import { setTimeout } from 'node:timers/promises'
import { practiceWithLongLetter } from '#server/long-letter-for-tests.ts'

export type PressFigures = {
  readonly kilobytes: number
  /** Milliseconds from asking for the long paper to having it. */
  readonly paper: number
  /** Milliseconds that requests for the server's health took meanwhile. */
  readonly median: number
  readonly most: number
}

/** A long paper is printed from a real server, and every 10 ms somebody asks whether the server is there. */
export async function benchPress(): Promise<PressFigures> {
  const { house, get, letter } = await practiceWithLongLetter()
  try {
    // The thread and its fonts are there, as in a clinic that has printed today.
    await get('owner-leaflet.pdf')
    const waits: number[] = []
    let printing = true
    const began = performance.now()
    const printed = get(letter).then(async (answer) => {
      if (answer.status !== 200) throw new Error(await answer.text())
      const bytes = (await answer.arrayBuffer()).byteLength
      printing = false
      return { bytes, took: performance.now() - began }
    })
    while (printing) {
      // The server is in this process: when it is busy the timer is late too, and the request would have waited as long.
      const asked = performance.now() + 10
      await setTimeout(10)
      await fetch(`${house.serving.url}/api/health`)
      waits.push(performance.now() - asked)
    }
    const { bytes, took } = await printed
    waits.sort((a, b) => a - b)
    return {
      kilobytes: bytes / 1000,
      paper: took,
      median: waits[Math.floor(waits.length / 2)] ?? 0,
      most: waits.at(-1) ?? 0,
    }
  } finally {
    await house.close()
  }
}
