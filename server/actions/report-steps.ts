/** Tells where work in steps stands, with a time left that a person can believe. */
import type { OnProgress } from './progress.ts'

/** Below this share, time left is a guess nobody should see. */
const TOO_EARLY = 0.05

/**
 * @param shares of the whole, in the order of the steps; they add up to 1
 * @param now ms of any clock that only goes forward
 * @returns to be told the share of one step; earlier steps count as done
 */
export function reportSteps<Name extends string>(
  shares: Record<Name, number>,
  onProgress: OnProgress | undefined,
  now: () => number,
): (name: Name, share: number) => void {
  const startMs = now()
  const names = Object.keys(shares) as Name[]
  let first: number | null = null
  return (name, share) => {
    const before = names.slice(0, names.indexOf(name)).reduce((sum, one) => sum + shares[one], 0)
    const fraction = Math.min(1, before + shares[name] * Math.min(1, Math.max(0, share)))
    // work that goes on after a kill begins late; what was done before says nothing of the pace
    first ??= fraction
    const pace = fraction - first
    const leftMs = pace < TOO_EARLY ? null : Math.round(((now() - startMs) * (1 - fraction)) / pace)
    onProgress?.({ label: name, fraction, leftMs, done: fraction >= 1 })
  }
}
