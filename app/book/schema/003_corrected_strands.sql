-- What she corrected among the traced strands of a comb-out: points on those that are no hair, and pairs of points on
-- those that are one hair (JSON lists of points, the pairs one after the other).
ALTER TABLE marks ADD COLUMN not_hair TEXT NOT NULL DEFAULT '[]';
ALTER TABLE marks ADD COLUMN joined TEXT NOT NULL DEFAULT '[]';
