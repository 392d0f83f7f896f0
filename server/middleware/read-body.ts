/** Readers of request bodies, for the routes that expect one. A body that nobody expects is never read. */
import express from 'express'
import type { RequestHandler } from 'express'

/** A transcript of 8 MB as a form: each byte may take three letters. */
const FORM_BYTES = 24 * 1024 * 1024
const FORM_FIELDS = 2000
/** A sheet of a long class is about one megabyte. */
const JSON_BYTES = 8 * 1024 * 1024

/** Fields of a form as text, or lists of text where a name comes more than once. The token is taken out. */
export function readForm(): RequestHandler {
  return express.urlencoded({ extended: false, limit: FORM_BYTES, parameterLimit: FORM_FIELDS, inflate: false })
}

/** An object or list in JSON. @param bytes the most it may hold */
export function readJsonBody(bytes: number = JSON_BYTES): RequestHandler {
  return express.json({ limit: bytes, strict: true, inflate: false })
}
