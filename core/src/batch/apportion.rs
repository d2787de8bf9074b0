//! Sharing a whole out in parts.

/// Shares `total` out in proportion to `weights`, of which none is negative and one is above 0.
///
/// Law: the parts add up to `total`. What rounding down leaves goes one by one to those who lost most by it, the earlier
/// first among equals.
pub(super) fn apportion(total: i64, weights: &[i64]) -> Vec<i64> {
    let all: i128 = weights.iter().map(|weight| i128::from(*weight)).sum();
    let product = |weight: &i64| i128::from(total) * i128::from(*weight);
    let mut parts: Vec<i64> = weights.iter().map(|w| (product(w) / all) as i64).collect();
    let mut lost: Vec<usize> = (0..weights.len()).collect();
    lost.sort_by_key(|n| std::cmp::Reverse(product(&weights[*n]) % all));
    let left = total - parts.iter().sum::<i64>();
    lost.into_iter()
        .take(left as usize)
        .for_each(|n| parts[n] += 1);
    parts
}
