/** The fast Fourier transform, for comparing long sounds: iterative, radix 2, in place (J. W. Cooley and J. W. Tukey, 1965). */

export interface Spectrum {
  real: Float64Array
  imaginary: Float64Array
}

/** The smallest power of two that is no smaller. */
export function powerOfTwo(length: number): number {
  let size = 1
  while (size < length) size *= 2
  return size
}

/** @param size a power of two, at least the number of values; the rest is zero */
export function transform(values: Float32Array, size: number): Spectrum {
  const spectrum = { real: new Float64Array(size), imaginary: new Float64Array(size) }
  spectrum.real.set(values)
  run(spectrum)
  return spectrum
}

/**
 * The cross-correlation of two sounds by their spectra: element n is how alike they are when the second lies n values
 * later than the first; what lies earlier is found at the end, size - n.
 */
export function correlate(first: Spectrum, second: Spectrum): Float64Array {
  const size = first.real.length
  const product = { real: new Float64Array(size), imaginary: new Float64Array(size) }
  for (let k = 0; k < size; k += 1) {
    const [a, b] = [first.real[k] ?? 0, first.imaginary[k] ?? 0]
    const [c, d] = [second.real[k] ?? 0, second.imaginary[k] ?? 0]
    // the first one's conjugate times the second, conjugated: one forward transform is then the inverse one
    product.real[k] = a * c + b * d
    product.imaginary[k] = -(a * d - b * c)
  }
  run(product)
  return product.real.map((value) => value / size)
}

function run({ real, imaginary }: Spectrum): void {
  const size = real.length
  for (let from = 1, to = 0; from < size; from += 1) {
    let bit = size >> 1
    for (; to & bit; bit >>= 1) to ^= bit
    to ^= bit
    if (from < to) {
      swap(real, from, to)
      swap(imaginary, from, to)
    }
  }
  for (let length = 2; length <= size; length *= 2) turn(real, imaginary, length)
}

/** One round: all pairs that lie half a length apart. */
function turn(real: Float64Array, imaginary: Float64Array, length: number): void {
  const half = length / 2
  const cosines = Float64Array.from({ length: half }, (_, k) => Math.cos((2 * Math.PI * k) / length))
  const sines = Float64Array.from({ length: half }, (_, k) => -Math.sin((2 * Math.PI * k) / length))
  for (let start = 0; start < real.length; start += length) {
    for (let k = 0; k < half; k += 1) {
      const [near, far] = [start + k, start + k + half]
      const [c, s] = [cosines[k] ?? 0, sines[k] ?? 0]
      const [x, y] = [real[far] ?? 0, imaginary[far] ?? 0]
      const [re, im] = [x * c - y * s, x * s + y * c]
      const [a, b] = [real[near] ?? 0, imaginary[near] ?? 0]
      real[near] = a + re
      imaginary[near] = b + im
      real[far] = a - re
      imaginary[far] = b - im
    }
  }
}

function swap(values: Float64Array, a: number, b: number): void {
  const held = values[a] ?? 0
  values[a] = values[b] ?? 0
  values[b] = held
}
