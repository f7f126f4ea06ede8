//! Order in a short list.

/// Puts a short list in order; equal items keep their order.
///
/// By insertion: the lists here have some tens of items, and all the sorts of the standard library, which are made for
/// thousands, weigh 25 kB in a program.
pub(crate) fn put_in_order<T>(items: &mut [T], comes_before: impl Fn(&T, &T) -> bool) {
    for new in 1..items.len() {
        let mut at = new;
        while at > 0 && comes_before(&items[new], &items[at - 1]) {
            at -= 1;
        }
        if at < new {
            items[at..=new].rotate_right(1);
        }
    }
}

#[cfg(test)]
mod tests {
    use super::put_in_order;

    #[test]
    fn items_come_in_order_and_equals_stay_as_they_were() {
        let mut items = [(3, 'a'), (1, 'b'), (3, 'c'), (2, 'd'), (1, 'e')];
        put_in_order(&mut items, |a, b| a.0 < b.0);
        assert_eq!(items, [(1, 'b'), (1, 'e'), (2, 'd'), (3, 'a'), (3, 'c')]);
        put_in_order(&mut [] as &mut [i32], |a, b| a < b);
    }
}
