#!/usr/bin/env bash
#SBATCH --job-name=planish
#SBATCH --array=1-16
#SBATCH --cpus-per-task=1
#SBATCH --output=planish-%A-%a.log
# One part of the plans for each task. Then one job merges them, whatever became of the tasks:
#   mkdir -p parts
#   job=$(sbatch --parsable --export=ALL,PLANS="$PWD/jobs",RULES="$PWD/rules",PARTS="$PWD/parts",DAY="$(date -u +%F)" array-job.sh)
#   sbatch --dependency=afterany:"$job" --wrap "planish merge --quiet --summary $PWD/parts/*.ndjson"
# Other engines of this kind name the number of the task otherwise; PART and OF take its place.
set -euo pipefail

part=${PART:-$SLURM_ARRAY_TASK_ID}
of=${OF:-$SLURM_ARRAY_TASK_COUNT}
planish check --quiet --force --as-of "$DAY" --shard "$part/$of" --rules "$RULES" --output "ndjson=$PARTS/part-$part.ndjson" "$PLANS"
