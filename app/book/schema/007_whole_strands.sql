-- Points on the traced strands of a comb-out that she says are whole hairs, though an end of theirs looks torn off.
ALTER TABLE marks ADD COLUMN whole TEXT NOT NULL DEFAULT '[]';
