import type { SqliteDatabase } from './connection.ts';

/** All that the keeping asks of its file, prepared once. */
export function statementsOn(db: Pick<SqliteDatabase, 'prepare'>) {
  return {
    holding: db.prepare('SELECT id FROM holding'),
    settle: db.prepare('INSERT INTO holding (only, id) VALUES (1, ?) ON CONFLICT DO NOTHING'),
    sums: db.prepare('SELECT sum FROM entry WHERE id = ?'),
    add: db.prepare('INSERT INTO entry (id, sum, device, n, prev, json) VALUES (?, ?, ?, ?, ?, ?)'),
    tip: db.prepare('SELECT n, sum FROM entry WHERE device = ? ORDER BY n DESC, sum LIMIT 1'),
    page: db.prepare('SELECT position, json FROM entry WHERE position > ? ORDER BY position LIMIT ?'),
    pick: db.prepare('SELECT position, json FROM entry WHERE device = ? AND n BETWEEN ? AND ? ORDER BY n, sum'),
    tips: db.prepare(`
      SELECT top.device AS device, top.n AS n, min(entry.sum) AS sum
      FROM (SELECT device, max(n) AS n FROM entry GROUP BY device) AS top
      JOIN entry ON entry.device = top.device AND entry.n = top.n
      GROUP BY top.device ORDER BY top.device
    `),
    heads: db.prepare('SELECT id, device, n, prev, sum FROM entry ORDER BY device, n, sum'),
    attach: db.prepare(
      'INSERT INTO attachment (hash, media_type, size_bytes, bytes) VALUES (?, ?, ?, ?) ON CONFLICT DO NOTHING',
    ),
    attachment: db.prepare('SELECT hash, media_type AS mediaType, bytes FROM attachment WHERE hash = ?'),
    attachments: db.prepare('SELECT hash, media_type AS mediaType, size_bytes FROM attachment ORDER BY hash'),
    detach: db.prepare('DELETE FROM attachment WHERE hash = ?'),
  };
}
