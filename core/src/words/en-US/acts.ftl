### Acts: what each act says when it is done, and its buttons.
