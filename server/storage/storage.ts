/** The storage: where recordings, clips and everything made of them lie. Keys are made by us only, from ids and fixed words. */
import type { Readable } from 'node:stream'
import { AppError } from '../../shared/errors.ts'

export interface StoredFile {
  bytes: number
  /** UTC ms of the last change. */
  changedUtc: number
}

/** How a file comes in. move takes it away from its place; copy leaves it; link shares its bytes where the disk allows, else copies. */
export type PutMode = 'move' | 'copy' | 'link'

export interface Storage {
  /**
   * Takes a file in, whole or not at all; what lay under the key before is replaced.
   * @throws AppError file-missing, disk-full, out-not-writable
   */
  putFile: (key: string, from: string, mode: PutMode) => Promise<StoredFile>
  /** The same with bytes at hand, for small files. @throws AppError disk-full, out-not-writable */
  putBytes: (key: string, bytes: Uint8Array | string) => Promise<StoredFile>
  /** The bytes from `start` up to and with `end`; all without them. @throws AppError row-missing */
  openRange: (key: string, range?: { start: number; end: number }) => Promise<Readable>
  /** null = there is none. */
  head: (key: string) => Promise<StoredFile | null>
  /** Where it lies on this machine, for ffmpeg and for sending. Nothing need be there. */
  path: (key: string) => string
  /** Keys that begin with these folders, sorted; '' = all. */
  list: (folder: string) => Promise<string[]>
  /** Also when it is not there. */
  delete: (key: string) => Promise<void>
  /** Bytes that can still be written. */
  freeBytes: () => Promise<number>
}

/** Letters, digits, dashes and underscores, in folders, with one ending at most: no key can lead out of the storage. */
const KEY = /^[\w-]{1,64}(\/[\w-]{1,64}){0,7}(\.\w{1,8})?$/

/** @throws AppError store-damaged, because only a damaged row can hold another */
export function checkKey(key: string): string {
  if (KEY.test(key)) return key
  throw new AppError('store-damaged', 'The store holds a place of a file that it cannot have. Restore a backup.')
}
