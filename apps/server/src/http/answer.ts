import type { Problem } from '@loamwright/science';
import type { Context } from 'hono';
import type { ContentfulStatusCode } from 'hono/utils/http-status';

/** Says no, with a coded problem; a body that hasn't been read yet is left unread. */
export function refuse(context: Context, status: ContentfulStatusCode, ...problems: readonly Problem[]): Response {
  return context.json({ ok: false, problems }, status, { 'cache-control': 'no-store' });
}

/** JSON, one value to a line. */
export const FILE_TYPE = 'application/x-ndjson';

/** Line by line, so that ten years with their photos are never in memory at once. */
export function asStream(lines: AsyncIterable<string>): ReadableStream<Uint8Array> {
  const iterator = lines[Symbol.asyncIterator]();
  const encoder = new TextEncoder();
  return new ReadableStream({
    pull: async (controller) => {
      const { done, value } = await iterator.next();
      if (done === true) controller.close();
      else controller.enqueue(encoder.encode(value));
    },
    cancel: async () => {
      await iterator.return?.();
    },
  });
}
