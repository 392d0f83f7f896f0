/** Server-sent events (WHATWG HTML, "Server-sent events"): open streams, their heartbeat, their limits and their end. */
import type { Request, Response } from 'express'
import { AppError } from '../../shared/errors.ts'

export interface StreamMessage {
  /** What the browser sends back as Last-Event-ID when it comes again. */
  id?: string
  /** The name that listeners use; without it, `message`. */
  event?: string
  /** One or more lines of text. */
  data: string
}

export interface EventStream {
  send: (message: StreamMessage) => void
  end: () => void
  /** Runs once when either side ended it. */
  onEnd: (work: () => void) => void
}

export interface Streams {
  /**
   * Begins a stream as the answer to a request.
   * @throws AppError streams-too-many
   */
  open: (req: Request, res: Response) => EventStream
  /** Ends them all; later ones end at once, and browsers come again when there is a studio again. */
  close: () => void
  count: () => number
}

export interface StreamLimits {
  heartbeatMs: number
  /** Streams of one client at once. */
  perClient: number
  /** Bytes that may wait for a browser that does not read; beyond them it is let go and comes again. */
  waitingBytes: number
}

export const STREAM_LIMITS: StreamLimits = { heartbeatMs: 15_000, perClient: 16, waitingBytes: 1_000_000 }
/** How long a browser waits before it comes again. */
const RETRY_MS = 2000

/** @param clientOf tells clients apart */
export function keepStreams(clientOf: (req: Request) => string, limits: StreamLimits = STREAM_LIMITS): Streams {
  const open = new Map<Response, string>()
  const endings = new Map<Response, () => void>()
  let closed = false
  // a comment line keeps proxies and the server's own idle limit from ending a quiet stream
  const beat = setInterval(() => {
    for (const res of open.keys()) write(res, ':\n\n', limits)
  }, limits.heartbeatMs).unref()

  return {
    open: (req, res) => {
      const client = clientOf(req)
      if ([...open.values()].filter((one) => one === client).length >= limits.perClient) {
        throw new AppError('streams-too-many', 'Too many pages of this studio are open at once. Close some of them.')
      }
      const works: (() => void)[] = []
      const end = (): void => {
        if (!open.delete(res)) return
        endings.delete(res)
        for (const work of works.splice(0)) work()
        res.end()
      }
      open.set(res, client)
      endings.set(res, end)
      res.once('close', end)
      res.writeHead(200, {
        'Content-Type': 'text/event-stream',
        'Cache-Control': 'no-store',
        'X-Accel-Buffering': 'no',
      })
      write(res, `retry: ${RETRY_MS}\n\n`, limits)
      if (closed) end()
      return {
        send: (message) => write(res, writeMessage(message), limits),
        end,
        onEnd: (work) => (open.has(res) ? void works.push(work) : work()),
      }
    },
    close: () => {
      closed = true
      clearInterval(beat)
      for (const end of [...endings.values()]) end()
    },
    count: () => open.size,
  }
}

/** A line break inside a field would begin another field. */
export function writeMessage({ id, event, data }: StreamMessage): string {
  const oneLine = (text: string): string => text.replace(/[\r\n\0]/g, ' ')
  const head = [
    ...(id === undefined ? [] : [`id: ${oneLine(id)}`]),
    ...(event === undefined ? [] : [`event: ${oneLine(event)}`]),
  ]
  const lines = data.split(/\r\n|\r|\n/).map((line) => `data: ${line}`)
  return `${[...head, ...lines].join('\n')}\n\n`
}

function write(res: Response, text: string, limits: StreamLimits): void {
  if (res.writableEnded || res.destroyed) return
  if (res.writableLength > limits.waitingBytes) res.destroy()
  else res.write(text)
}
