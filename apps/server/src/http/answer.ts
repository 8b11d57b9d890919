import type { Problem } from '@loamwright/science';
import type { Context } from 'hono';
import type { ContentfulStatusCode } from 'hono/utils/http-status';

/** Says no, with a coded problem; a body that hasn't been read yet is left unread. */
export function refuse(context: Context, status: ContentfulStatusCode, ...problems: readonly Problem[]): Response {
  return context.json({ ok: false, problems }, status, { 'cache-control': 'no-store' });
}
