/** Types of the package webvtt-parser, as far as we use it. */
declare module 'webvtt-parser' {
  type OnError = (message: string, column: number) => void

  const parser: {
    WebVTTCueTimingsAndSettingsParser: new (
      line: string,
      onError: OnError,
    ) => { parse(cue: object, previousStart: number): true | undefined }
    WebVTTCueTextParser: new (
      text: string,
      onError: OnError,
      mode: string | undefined,
      entities: Readonly<Record<string, string>>,
    ) => { parse(start: number, end: number): { children: object[] } }
  }
  export = parser
}
