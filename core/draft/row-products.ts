/** Products of rows of numbers, four at a time, in WebAssembly: several times as fast as the same loops in JavaScript. */
import { bytesOf } from './base-64.ts'

/** Numbers of 32 bits in a memory of their own; the length of values is a multiple of eight. */
export interface RowProducts {
  /** Takes memory for so many numbers, all 0. */
  numbers: (count: number) => Float32Array
  /** Each of the sums grows by a row of the weights times the values. */
  forwards: (sums: Float32Array, weights: Float32Array, values: Float32Array) => void
  /** The same for slopes: what the weights and the values grow by, for those of the sums. */
  backwards: (slope: Float32Array, weights: Float32Array, slopes: Float32Array, values: SlopedValues) => void
}

export interface SlopedValues {
  values: Float32Array
  slopes: Float32Array
}

/** @param most how many numbers are taken at the most */
export function rowProducts(most: number): RowProducts {
  const { memory, forwards, backwards } = new WebAssembly.Instance(compiled).exports
  memory.grow(Math.ceil((most * 4) / PAGE))
  let free = 0
  return {
    numbers: (count) => {
      const place = free
      free += Math.ceil(count / 8) * 32
      return new Float32Array(memory.buffer, place, count)
    },
    forwards: (sums, weights, values) => {
      forwards(sums.byteOffset, weights.byteOffset, values.byteOffset, values.byteLength, sums.length)
    },
    backwards: (slope, weights, slopes, { values, slopes: others }) => {
      const [one, two, three] = [slope.byteOffset, weights.byteOffset, slopes.byteOffset]
      backwards(one, two, three, values.byteOffset, others.byteOffset, values.byteLength, slope.length)
    },
  }
}

/** Bytes of a page of such a memory. */
const PAGE = 65536

/** The little that is used of the WebAssembly JavaScript interface (a W3C recommendation). */
declare const WebAssembly: {
  Module: new (bytes: Uint8Array) => object
  Instance: new (module: object) => { exports: Exports }
}

interface Exports {
  memory: { buffer: ArrayBuffer; grow: (pages: number) => void }
  forwards: (...placesBytesRows: number[]) => void
  backwards: (...placesBytesRows: number[]) => void
}

/** tests/core/draft/row-products.wat, compiled; a test holds one against the other. */
export const ROW_PRODUCTS = `
AGFzbQEAAAABEwJgBX9/f39/AGAHf39/f39/fwADAwIAAQUDAQABByEDBm1lbW9yeQIACGZvcndhcmRzAAAJYmFja3dhcmRzAAEK1AICwgECAX
8CewNA/QwAAAAAAAAAAAAAAAAAAAAAIQb9DAAAAAAAAAAAAAAAAAAAAAAhB0EAIQUDQCAGIAEgBWr9AAQAIAIgBWr9AAQA/eYB/eQBIQYgByAB
IAVq/QAEECACIAVq/QAEEP3mAf3kASEHIAVBIGohBSAFIANJDQALIAYgB/3kASEGIAAgACoCACAG/R8AIAb9HwGSIAb9HwIgBv0fA5KSkjgCAC
AAQQRqIQAgASADaiEBIARBAWshBCAEDQALC40BAgF/AXsDQCAAKgIA/RMhCEEAIQcDQCACIAdqIAIgB2r9AAQAIAggAyAHav0ABAD95gH95AH9
CwQAIAQgB2ogBCAHav0ABAAgCCABIAdq/QAEAP3mAf3kAf0LBAAgB0EQaiEHIAcgBUkNAAsgAEEEaiEAIAEgBWohASACIAVqIQIgBkEBayEGIA
YNAAsL
`
const compiled = new WebAssembly.Module(bytesOf(ROW_PRODUCTS))
