/** Keys of a recording's files in the storage, from ids only. */

/** The files as they came; nothing ever writes to them. */
export const filesFolder = (recordingId: string): string => `recordings/${recordingId}/files`
export const fileKey = (recordingId: string, fileId: string): string => `${filesFolder(recordingId)}/${fileId}`

/** The film that was made of several parts; `sum` names the parts and their order. */
export const joinedFolder = (recordingId: string): string => `recordings/${recordingId}/joined`
export const joinedKey = (recordingId: string, sum: string): string => `${joinedFolder(recordingId)}/${sum}`
/** Such films go when the parts of their class change. */
export const isJoined = (key: string): boolean => /^recordings\/[^/]+\/joined\//.test(key)

/** What was made of one file, such as its thumbnails. */
export const madeFolder = (recordingId: string, mediaId: string): string => `recordings/${recordingId}/made/${mediaId}`

/** One byte for each step of time, 255 = full scale. @param zoom bytes a second */
export const peaksKey = (recordingId: string, mediaId: string, zoom: number): string =>
  `${madeFolder(recordingId, mediaId)}/peaks-${zoom}.bin`
/** The same at one zoom, as far as the film is looked through; gone once all of it is. */
export const growingWaveKey = (recordingId: string, mediaId: string): string =>
  `${madeFolder(recordingId, mediaId)}/wave-growing.bin`
/** JSON of FoundSpeech. */
export const speechKey = (recordingId: string, mediaId: string): string =>
  `${madeFolder(recordingId, mediaId)}/speech.json`
/** JSON list of key frames' times in ms. */
export const keyFramesKey = (recordingId: string, mediaId: string): string =>
  `${madeFolder(recordingId, mediaId)}/key-frames.json`
export const thumbsKey = (recordingId: string, mediaId: string, sheet: number): string =>
  `${madeFolder(recordingId, mediaId)}/sheet-${sheet}.jpg`
export const previewKey = (recordingId: string, mediaId: string, isWhole: boolean): string =>
  `${madeFolder(recordingId, mediaId)}/preview-${isWhole ? 'whole' : 'growing'}.mp4`
/** The folder of clips that were cut to be looked at; not published. */
export const cutFolder = (recordingId: string): string => `recordings/${recordingId}/cut`
/** A preview or a wave that is being written; it is made anew where it is missing. */
export const isGrowing = (key: string): boolean => /\/(preview|wave)-growing\.\w+$/.test(key)
