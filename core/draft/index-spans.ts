/** Answers whose stretch of text holds a character, in a few steps however many stretches there are. */

/** Builds the answer for stretches that do not overlap. The owner of the stretch that holds the offset, or null. */
export function indexSpans<Owner>(
  spans: readonly { offset: number; end: number; owner: Owner }[],
): (offset: number) => Owner | null {
  const sorted = [...spans].sort((a, b) => a.offset - b.offset)
  return (offset) => {
    let low = 0
    let high = sorted.length
    while (low < high) {
      const middle = (low + high) >> 1
      if ((sorted[middle]?.offset ?? 0) <= offset) low = middle + 1
      else high = middle
    }
    const span = sorted[low - 1]
    return span && offset < span.end ? span.owner : null
  }
}
