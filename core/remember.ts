/** Keeps what a pure function gave for a text, for speech is asked the same things many times. */

/**
 * The function with a memory of its last results by text: of at least `most` of them and at most twice as many, so that it
 * never grows without end. What it gives is shared: callers must not change it.
 */
export function remember<Result>(most: number, of: (text: string) => Result): (text: string) => Result {
  let recent = new Map<string, Result>()
  let older = new Map<string, Result>()
  return (text) => {
    const known = recent.get(text)
    if (known !== undefined) return known
    const result = older.get(text) ?? of(text)
    if (recent.size >= most) {
      older = recent
      recent = new Map()
    }
    recent.set(text, result)
    return result
  }
}
