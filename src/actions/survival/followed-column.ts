/** Numbers that come one by one, kept in blocks: a million of them take eight megabytes. */
export type NumberColumn = { readonly add: (value: number) => void; readonly all: () => Float64Array }

export function numberColumn(): NumberColumn {
  let kept = new Float64Array(1024)
  let length = 0
  return {
    add: (value) => {
      if (length === kept.length) {
        const larger = new Float64Array(kept.length * 2)
        larger.set(kept)
        kept = larger
      }
      kept[length] = value
      length += 1
    },
    all: () => kept.subarray(0, length),
  }
}
