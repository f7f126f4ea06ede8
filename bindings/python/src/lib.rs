//! Python interface of coldloop.
