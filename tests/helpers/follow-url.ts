// Reads server-sent events one after the other, for tests; written from WHATWG HTML 9.2.6, apart from the server's writer.
import { onTestFinished } from 'vitest'

/** Fields of one message; a comment line gives `comment`, the end of the stream `end`. */
export type Message = Record<string, string>

export interface Following {
  status: number
  headers: Headers
  next: () => Promise<Message>
  leave: () => Promise<void>
}

export async function followUrl(url: string, headers: Record<string, string> = {}): Promise<Following> {
  const stop = new AbortController()
  const response = await fetch(url, { headers, signal: stop.signal })
  const reader = response.body?.pipeThrough(new TextDecoderStream()).getReader()
  let waiting = ''
  let ended = false
  const leave = async (): Promise<void> => {
    stop.abort()
    await reader?.cancel().catch(() => undefined)
  }
  onTestFinished(leave)
  const next = async (): Promise<Message> => {
    for (;;) {
      const end = waiting.indexOf('\n\n')
      if (end >= 0) {
        const block = waiting.slice(0, end)
        waiting = waiting.slice(end + 2)
        return parseBlock(block)
      }
      if (ended || !reader) return { end: 'yes' }
      const { value, done } = await reader.read()
      ended = done
      waiting += value ?? ''
    }
  }
  return { status: response.status, headers: response.headers, next, leave }
}

function parseBlock(block: string): Message {
  const message: Message = {}
  for (const line of block.split('\n')) {
    const colon = line.indexOf(':')
    const name = colon === 0 ? 'comment' : line.slice(0, colon)
    const value = line.slice(colon + 1).replace(/^ /, '')
    message[name] = name === 'data' && message['data'] !== undefined ? `${message['data']}\n${value}` : value
  }
  return message
}
