/** Many readers of one file over HTTP, each asking for one random range after the other; whole bytes are counted, none are kept. */
import { connect } from 'node:net'

export interface ReadersJob {
  port: number
  address: string
  headers: Readonly<Record<string, string>>
  readers: number
  /** Size of the file and of one range. */
  fileBytes: number
  rangeBytes: number
  seconds: number
}

export interface ReadersResult {
  requests: number
  bytes: number
  /** Answers that were not 206 with the whole range, and lost connections. */
  errors: number
  seconds: number
  /** ms from asking to the last byte. */
  latencies: number[]
}

/** One connection a reader, kept open; the same read buffer for all, because nothing is looked at but the head. */
export async function readRanges(job: ReadersJob): Promise<ReadersResult> {
  const result: ReadersResult = { requests: 0, bytes: 0, errors: 0, seconds: 0, latencies: [] }
  const startMs = performance.now()
  const endMs = startMs + job.seconds * 1000
  await Promise.all(Array.from({ length: job.readers }, () => read(job, endMs, result)))
  result.seconds = (performance.now() - startMs) / 1000
  return result
}

function read(job: ReadersJob, endMs: number, result: ReadersResult): Promise<void> {
  return new Promise((resolve) => {
    const buffer = Buffer.allocUnsafe(256 * 1024)
    let head = ''
    let left = -1
    let askedMs = 0
    let done = false
    const ask = (): void => {
      const start = Math.floor(Math.random() * (job.fileBytes - job.rangeBytes))
      const fields = { ...job.headers, range: `bytes=${start}-${start + job.rangeBytes - 1}` }
      const lines = Object.entries(fields).map(([name, value]) => `${name}: ${value}\r\n`)
      head = ''
      left = -1
      askedMs = performance.now()
      socket.write(`GET ${job.address} HTTP/1.1\r\nhost: 127.0.0.1:${job.port}\r\n${lines.join('')}\r\n`)
    }
    const end = (isError: boolean): void => {
      if (done) return
      done = true
      if (isError) result.errors += 1
      socket.destroy()
      resolve()
    }
    /** @returns bytes of the body among these, or null when the answer is not what was asked for */
    const takeHead = (bytes: number): number | null => {
      head += buffer.toString('latin1', 0, bytes)
      const edge = head.indexOf('\r\n\r\n')
      if (edge === -1) return 0
      const isRight = head.startsWith('HTTP/1.1 206 ') && head.includes(`ength: ${job.rangeBytes}\r\n`)
      left = job.rangeBytes
      return isRight ? head.length - edge - 4 : null
    }
    const take = (bytes: number): boolean => {
      const body = left === -1 ? takeHead(bytes) : bytes
      if (body === null) end(true)
      else if (left !== -1) left -= body
      if (left < -1) end(true)
      if (left !== 0 || done) return true
      result.requests += 1
      result.bytes += job.rangeBytes
      result.latencies.push(performance.now() - askedMs)
      if (performance.now() < endMs) ask()
      else end(false)
      return true
    }
    const socket = connect({ port: job.port, host: '127.0.0.1', onread: { buffer, callback: take } })
    socket.on('connect', ask)
    socket.on('error', () => end(true))
    socket.on('close', () => end(true))
  })
}
