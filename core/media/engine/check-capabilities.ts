/** Asks ffmpeg which of the parts that we need it has. */
import { explainFailure } from '../explain-failure.ts'
import { LIST_OPTIONS, NEEDED_PARTS, readPartNames } from '../read-capabilities.ts'
import type { NeededPart, PartKind } from '../read-capabilities.ts'
import type { Ffmpeg } from './find-ffmpeg.ts'
import { runProcess } from './run-process.ts'

export type PartFound = NeededPart & { present: boolean }

/**
 * Every part we need, each present or not, in the order of the table.
 * @throws AppError engine-failed when ffmpeg cannot list its parts.
 */
export async function checkCapabilities(found: Ffmpeg): Promise<PartFound[]> {
  const kinds = [...new Set(NEEDED_PARTS.map((part) => part.kind))]
  const lists = new Map<PartKind, Set<string>>()
  for (const kind of kinds) lists.set(kind, await listParts(found, kind))
  return NEEDED_PARTS.map((part) => ({ ...part, present: lists.get(part.kind)?.has(part.name) ?? false }))
}

async function listParts(found: Ffmpeg, kind: PartKind): Promise<Set<string>> {
  const limits = { timeoutMs: 20_000, maxOutputBytes: 2_000_000 }
  const result = await runProcess(found.ffmpeg, ['-hide_banner', LIST_OPTIONS[kind]], limits)
  if (result.exitCode === 0) return readPartNames(result.stdout)
  const { exitCode, exitSignal: signal, lines } = result
  throw explainFailure({ doing: `Listing the ${kind}s of ffmpeg`, exitCode, signal, lines })
}
