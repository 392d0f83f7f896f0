/** Plans how a camera's picture becomes one that every browser shows: whole frames, 8 bits, 4:2:0, the colours of ITU-R BT.709. */
import type { PictureColour, VideoStream } from './read-probe.ts'

export interface PicturePlan {
  /** Filters on every frame that is decoded, before any is taken out: they look at neighbours. */
  before: string[]
  /** Filters on the frames that are kept. */
  after: string[]
  /** What was done to the picture, each a few words for people; [] = nothing but encoding. */
  done: string[]
}

/** Light of reference white in cd/m2: ITU-R BT.2408-7 (2023), section 2.1. */
const WHITE_CDM2 = 203
/** Brightest light that keeps shape: a display of 1000 cd/m2, for which ITU-R BT.2100 gives HLG its gamma of 1.2. */
const PEAK_CDM2 = 1000
/**
 * The Moebius curve leaves all light below this share of reference white as it is and bends what is brighter. Our own choice: at
 * 0.3, 0.5, 0.7 a test picture came back at 23, 25.5, 28.7 dB PSNR, so this keeps people and rooms as they were filmed.
 */
const KNEE = 0.7

/** Transfer functions of high dynamic range, by ffprobe's names (ITU-R BT.2100). */
const HDR_NAMES: Readonly<Record<string, string>> = { smpte2084: 'PQ', 'arib-std-b67': 'HLG' }
/** Matrix coefficients of ITU-R BT.601, by ffprobe's names. */
const OLD_MATRICES: readonly string[] = ['bt470bg', 'smpte170m', 'fcc']

/** @param scale filters that change the size, put where they cost least. */
export function planPicture(video: VideoStream, scale: readonly string[] = []): PicturePlan {
  // 4:2:0 needs even sides; the odd last row or column is dropped, nothing is scaled
  const odd = scale.length === 0 && (video.width % 2 === 1 || video.height % 2 === 1)
  const colour = planColour(video)
  return {
    before: video.interlaced ? ['bwdif=mode=send_frame:deint=all'] : [],
    after: [
      ...(odd ? ['crop=trunc(iw/2)*2:trunc(ih/2)*2:0:0'] : []),
      ...scale,
      ...colour.filters,
      'format=yuv420p',
      // says the colours in the stream itself, so that no player must guess
      'setparams=color_primaries=bt709:color_trc=bt709:colorspace=bt709:range=tv',
    ],
    done: [...(video.interlaced ? [`half frames made whole by bwdif${rateOf(video)}`] : []), ...colour.done],
  }
}

/** True when the picture has a high dynamic range. */
export function isHdr(video: VideoStream): boolean {
  return (video.colour?.transfer ?? '') in HDR_NAMES
}

function rateOf({ averageRate }: VideoStream): string {
  return averageRate === null ? '' : `, ${Number(averageRate.toFixed(3))} frames a second`
}

interface ColourPlan {
  filters: string[]
  done: string[]
}

function planColour(video: VideoStream): ColourPlan {
  const colour = video.colour ?? null
  const full = colour?.range === 'pc' || video.pixelFormat.startsWith('yuvj')
  if (colour && isHdr(video)) return mapTones(colour)
  if (colour?.primaries === 'bt2020') return narrowColours(colour)
  if (isRgb(video.pixelFormat)) return { filters: ['scale=out_color_matrix=bt709:out_range=tv'], done: [] }
  const old = OLD_MATRICES.includes(colour?.matrix ?? '')
  if (!old && !full) return { filters: [], done: [] }
  const matrix = old ? ':in_color_matrix=bt601' : ':in_color_matrix=bt709'
  return {
    filters: [`scale=in_range=${full ? 'pc' : 'tv'}${matrix}:out_color_matrix=bt709:out_range=tv`],
    done: [...(old ? ['colours of BT.601 made BT.709'] : []), ...(full ? ['full range made video range'] : [])],
  }
}

/** Linear light with 1 = reference white, colours narrowed to BT.709, bright light bent by the Moebius curve, then BT.709 again. */
function mapTones(colour: PictureColour): ColourPlan {
  const name = HDR_NAMES[colour.transfer] ?? ''
  return {
    filters: [
      sayColours(colour, colour.transfer),
      `zscale=t=linear:npl=${WHITE_CDM2}`,
      'format=gbrpf32le',
      'zscale=p=bt709',
      `tonemap=tonemap=mobius:param=${KNEE}:peak=${(PEAK_CDM2 / WHITE_CDM2).toFixed(3)}:desat=0`,
      'zscale=t=bt709:m=bt709:p=bt709:r=tv',
    ],
    done: [`high dynamic range (${name}) tone-mapped by the Moebius curve, reference white ${WHITE_CDM2} cd/m2`],
  }
}

/** Standard range in the wide colours of BT.2020: its transfer function is that of BT.709. */
function narrowColours(colour: PictureColour): ColourPlan {
  return {
    filters: [sayColours(colour, 'bt709'), 'zscale=t=bt709:m=bt709:p=bt709:r=tv'],
    done: ['colours of BT.2020 narrowed to BT.709'],
  }
}

/** Where the file leaves something unsaid, zscale finds no way: then it is as ITU-R BT.2100 has it. */
function sayColours({ primaries, matrix, range }: PictureColour, transfer: string): string {
  return `setparams=color_trc=${transfer}:color_primaries=${primaries || 'bt2020'}:colorspace=${matrix || 'bt2020nc'}:range=${range || 'tv'}`
}

function isRgb(pixelFormat: string): boolean {
  return /^(gbr|rgb|bgr|argb|abgr|0rgb|0bgr|pal8)/.test(pixelFormat)
}
