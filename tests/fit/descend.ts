/** Steps that fit weights: down along the whole gradient, each weight at its own rate; the same input gives the same weights. */

export interface Descent {
  steps: number
  rate: number
}

/** Moves the weights in place. @param slopeAt the gradient at the weights as they stand */
export function descend(weights: Float64Array, { steps, rate }: Descent, slopeAt: () => Float64Array): void {
  const squares = new Float64Array(weights.length).fill(1e-6)
  for (let step = 0; step < steps; step++) {
    slopeAt().forEach((down, index) => {
      const square = (squares[index] ?? 0) + down * down
      squares[index] = square
      weights[index] = (weights[index] ?? 0) - (rate * down) / Math.sqrt(square)
    })
  }
}
