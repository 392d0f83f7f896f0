/** Reads what ffprobe says of a finished clip, streams and packets in one text (its JSON), into values to check. */
import { readPackets } from './read-packets.ts'
import type { FrameIndex } from './read-packets.ts'
import { readProbe } from './read-probe.ts'
import type { Probe } from './read-probe.ts'

export interface ClipFacts {
  probe: Probe
  /** null when the clip has no picture. */
  index: FrameIndex | null
  /** MD5 of each picture packet in decode order; empty when it was not asked for. */
  hashes: string[]
  /** Time stamps that do not rise, by kind of stream; decoding must go forward. */
  backwards: string[]
}

/** What to ask ffprobe for. @param hashed true also hashes every packet. */
export function clipQuestions(hashed: boolean): string[] {
  const packet = `packet=stream_index,pts,dts,duration,flags${hashed ? ',data_hash' : ''}`
  return ['-show_entries', `format:stream:${packet}`, ...(hashed ? ['-show_data_hash', 'md5'] : []), '-of', 'json']
}

interface Packet {
  stream_index?: number
  pts?: number
  dts?: number
  duration?: number
  flags?: string
  data_hash?: string
}

/** @returns null when the text is no such output. */
export function readClip(jsonText: string): ClipFacts | null {
  const probe = readProbe(jsonText)
  if (!probe) return null
  const packets = (JSON.parse(jsonText) as { packets?: Packet[] }).packets ?? []
  const { video } = probe
  const pictures = packets.filter((packet) => packet.stream_index === video?.index)
  const csv = pictures.map(({ pts, duration, flags }) => `${pts ?? 'N/A'},${duration ?? 'N/A'},${flags ?? '__'}`)
  return {
    probe,
    index: video && readPackets(csv.join('\n'), video.timeBase, 0),
    hashes: pictures.flatMap(({ data_hash }) => (data_hash ? [data_hash.replace(/^MD5:/, '')] : [])),
    backwards: probe.streamKinds.filter((_, stream) => {
      const times = packets.filter((packet) => packet.stream_index === stream).map(({ dts }) => dts)
      return times.some((dts, place) => dts === undefined || (place > 0 && dts <= (times[place - 1] ?? -Infinity)))
    }),
  }
}
