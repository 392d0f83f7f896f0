/** The products in WebAssembly are those of the source beside, and right. */
import { readFileSync } from 'node:fs'
import path from 'node:path'
import { expect, it } from 'vitest'
import wabt from 'wabt'
import { bytesOf } from '../../../core/draft/base-64.ts'
import { ROW_PRODUCTS, rowProducts } from '../../../core/draft/row-products.ts'

it('is the compiled source', async () => {
  const source = readFileSync(path.join(import.meta.dirname, 'row-products.wat'), 'utf8')
  const { buffer } = (await wabt()).parseWat('row-products.wat', source, { simd: true }).toBinary({})
  expect([...bytesOf(ROW_PRODUCTS)]).toEqual([...buffer])
})

it('multiplies rows, and gives the slopes back', () => {
  const products = rowProducts(200)
  const take = (values: number[]): Float32Array => {
    const numbers = products.numbers(values.length)
    numbers.set(values)
    return numbers
  }
  const rows = [1, 2, 3, 4, 5, 6, 7, 8, -1, 0, 1, 0, 2, 0, 0.5, 0]
  const values = [2, 0, 1, 0, 0, 1, 0, 3]
  const sums = take([10, 20])
  products.forwards(sums, take(rows), take(values))
  // By hand: 2 + 3 + 6 + 24 and -2 + 1.
  expect([...sums]).toEqual([10 + 35, 20 - 1])
  const [slopes, valueSlopes] = [take(rows.map(() => 1)), take(values.map(() => 0))]
  products.backwards(take([2, -1]), take(rows), slopes, { values: take(values), slopes: valueSlopes })
  expect([...slopes]).toEqual([...values.map((one) => 1 + 2 * one), ...values.map((one) => 1 - one)])
  expect([...valueSlopes]).toEqual(rows.slice(0, 8).map((one, at) => 2 * one - (rows[8 + at] ?? 0)))
})

it('reads base 64 (RFC 4648, section 10)', () => {
  const text = (letters: string): string => String.fromCharCode(...bytesOf(letters))
  expect(['', 'Zg==', 'Zm8=', 'Zm9v', 'Zm9vYg==', 'Zm9vYmE=', 'Zm9v\nYmFy'].map(text)).toEqual([
    '',
    'f',
    'fo',
    'foo',
    'foob',
    'fooba',
    'foobar',
  ])
})
