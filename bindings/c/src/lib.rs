//! C interface of coldloop.
