-- Which rule stops most, by month. Beside the archive, reports.ndjson (planish check --format ndjson, one after the other):
--   duckdb < stops-by-month.duckdb.sql
WITH stops AS (
  SELECT strftime(as_of::DATE, '%Y-%m') AS month, file, unnest(findings) AS finding
  FROM read_json('reports.ndjson', format = 'newline_delimited', maximum_object_size = 268435456)
),
counted AS (
  SELECT month, finding.rule AS rule, count(DISTINCT file) AS plans
  FROM stops
  WHERE finding.severity = 'stop'
  GROUP BY ALL
)
SELECT month, rule, plans
FROM counted
QUALIFY rank() OVER (PARTITION BY month ORDER BY plans DESC) = 1
ORDER BY month, rule;
