-- Which rule stops most, by month. Beside the archive, reports.ndjson (planish check --format ndjson, one after the other):
--   sqlite3 < stops-by-month.sqlite.sql
CREATE TABLE line (text TEXT);
.mode ascii
.separator "\037" "\n"
.import reports.ndjson line

.mode box
SELECT month, rule, plans
FROM (
  SELECT
    substr(json_extract(line.text, '$.as_of'), 1, 7) AS month,
    json_extract(finding.value, '$.rule') AS rule,
    count(DISTINCT json_extract(line.text, '$.file')) AS plans,
    rank() OVER (
      PARTITION BY substr(json_extract(line.text, '$.as_of'), 1, 7)
      ORDER BY count(DISTINCT json_extract(line.text, '$.file')) DESC
    ) AS place
  FROM line, json_each(line.text, '$.findings') AS finding
  WHERE json_extract(finding.value, '$.severity') = 'stop'
  GROUP BY month, rule
)
WHERE place = 1
ORDER BY month, rule;
