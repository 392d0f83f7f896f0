// A body that comes too slowly is not waited for; one that has come, or an upload, is.
import { once } from 'node:events'
import { connect } from 'node:net'
import type { AddressInfo } from 'node:net'
import { createServer } from 'node:http'
import express from 'express'
import { expect, it, onTestFinished } from 'vitest'
import { answerErrors } from '../../../server/middleware/answer-errors.ts'
import { limitTime } from '../../../server/middleware/limit-time.ts'
import { readJsonBody } from '../../../server/middleware/read-body.ts'

/** Sends the text and no more, and gives all that comes back until the other side closes. */
async function send(port: number, text: string): Promise<string> {
  const socket = connect(port, '127.0.0.1')
  let answer = ''
  socket.setEncoding('utf8').on('data', (part: string) => (answer += part))
  socket.write(text)
  await once(socket, 'close')
  return answer
}

async function open(bodyMs: number): Promise<number> {
  const app = express()
  app.use(limitTime({ bodyMs, unlimited: ['/uploads'] }))
  app.post('/slow-work', async (_req, res) => {
    await new Promise((resolve) => setTimeout(resolve, bodyMs * 3))
    res.send('worked')
  })
  app.post('/uploads/one', (req, res) => {
    req.resume()
    setTimeout(() => res.send('still here'), bodyMs * 3)
  })
  app.post('/body', readJsonBody(), (_req, res) => void res.send('read'))
  app.use(answerErrors(() => undefined))
  const server = createServer(app).listen(0, '127.0.0.1')
  await once(server, 'listening')
  onTestFinished(() => {
    server.closeAllConnections()
    server.close()
  })
  return (server.address() as AddressInfo).port
}

const head = (address: string, length: number): string =>
  `POST ${address} HTTP/1.1\r\nHost: x\r\nConnection: close\r\nContent-Type: application/json\r\nContent-Length: ${length}\r\n\r\n`

it('ends a request whose body never comes to its end with 408', async () => {
  const answer = await send(await open(20), `${head('/body', 100)}{"half":`)
  // RFC 9110 (2022), section 15.5.9
  expect(answer).toMatch(/^HTTP\/1\.1 408 /)
  expect(answer).toMatch(/\r\nConnection: close\r\n/)
  expect(answer).toContain('request-slow')
})

it.each([
  ['an empty body', head('/slow-work', 0), 'worked'],
  ['a body that nobody reads', `${head('/slow-work', 2)}{}`, 'worked'],
  ['an upload that goes on', `${head('/uploads/one', 100)}{"half":`, 'still here'],
])('waits for work on %s', async (_name, text, words) => {
  const answer = await send(await open(20), text)
  expect(answer).toMatch(/^HTTP\/1\.1 200 /)
  expect(answer).toContain(words)
})
